package org.standproud.audit.store;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.Person;
import org.standproud.audit.Withholding;

/**
 * Takes texts of old records away, or masks them. Each time a record of its own goes into the chain
 * in the same transaction; digests, seals, verdicts and findings stay, so the chain can still be
 * checked and the cards still be counted.
 *
 * <p>The database may keep old pages until it is compacted: H2 by {@code SHUTDOWN COMPACT},
 * PostgreSQL by {@code VACUUM}. Backups made before hold the texts still.
 */
public final class Retention {

  /** Records named by one record, so that none grows without bound. */
  private static final int AT_A_TIME = 200;

  private final Records records;
  private final Clock clock;

  /**
   * Retention of some records.
   *
   * @param records the records
   * @param clock tells when texts were taken
   */
  public Retention(Records records, Clock clock) {
    this.records = records;
    this.clock = clock;
  }

  /**
   * Takes from every record that a query finds what it still has of it.
   *
   * @param query which, such as those before a day
   * @param mask what to take
   * @param by who orders it
   * @param reason why
   * @return how many records lost text
   * @throws InterruptedException when interrupted; what was taken so far is recorded
   */
  public long withhold(RecordQuery query, Mask mask, Person by, String reason)
      throws InterruptedException {
    long taken = 0;
    while (true) {
      // Read anew each time: what was masked no longer counts, and memory stays small.
      List<Prepared.Masked> next = next(query, mask);
      if (next.isEmpty()) {
        return taken;
      }
      take(next, mask, by, reason);
      taken += next.size();
    }
  }

  private List<Prepared.Masked> next(RecordQuery query, Mask mask) {
    List<Prepared.Masked> found = new ArrayList<>();
    records.eachRow(
        query,
        row -> {
          masked(row, mask).ifPresent(found::add);
          return found.size() < AT_A_TIME;
        });
    return found;
  }

  private static Optional<Prepared.Masked> masked(RecordTables.Row row, Mask mask) {
    AuditRecord record = AuditRecord.from(row.link().text());
    AuditRecord left = mask.of(record);
    return left.equals(record)
        ? Optional.empty()
        : Optional.of(new Prepared.Masked(row.link().sequence(), row.link().digest(), left));
  }

  private void take(List<Prepared.Masked> masked, Mask mask, Person by, String reason)
      throws InterruptedException {
    List<Withholding.Taken> taken =
        masked.stream()
            .map(
                m ->
                    new Withholding.Taken(
                        m.sequence(), m.left().id(), m.digest(), m.left().body().sha256()))
            .toList();
    records.withhold(
        new Withholding(AuditRecord.newId(), clock.instant(), by, reason, mask, taken),
        List.copyOf(masked));
  }
}
