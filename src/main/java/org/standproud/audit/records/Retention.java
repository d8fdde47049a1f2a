package org.standproud.audit.records;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.ChainRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.Person;
import org.standproud.audit.Withholding;

/**
 * Removes or masks texts of old records. Each removal adds a record to the chain in the same
 * transaction; digests, seals, verdicts and findings stay, so the chain can still be checked and
 * findings counted.
 *
 * <p>The database may keep old pages until it is compacted: H2 by {@code SHUTDOWN COMPACT},
 * PostgreSQL by {@code VACUUM}. Earlier backups still hold the texts.
 */
public final class Retention {

  /** Most records named by one removal record. */
  private static final int AT_A_TIME = 200;

  private final Records records;
  private final Clock clock;

  /**
   * Creates the service.
   *
   * @param records the records
   * @param clock clock for removals
   */
  public Retention(Records records, Clock clock) {
    this.records = records;
    this.clock = clock;
  }

  /**
   * Removes the text of every answer of a query; if the query has only a period, of every decision
   * of that period too.
   *
   * @param query the query, such as records before a day
   * @param mask what to remove
   * @param by the person who orders it
   * @param reason the reason
   * @return number of records that lost text
   * @throws InterruptedException if interrupted; removals so far are recorded
   */
  public long withhold(RecordQuery query, Mask mask, Person by, String reason)
      throws InterruptedException {
    long answers = withhold(before -> records.rows(query, before, AT_A_TIME), mask, by, reason);
    return query.words().isEmpty()
        ? answers
            + withhold(before -> records.decisions(query, before, AT_A_TIME), mask, by, reason)
        : answers;
  }

  private long withhold(
      LongFunction<List<RecordTables.Row>> before, Mask mask, Person by, String reason)
      throws InterruptedException {
    long taken = 0;
    List<RecordTables.Row> rows = before.apply(Long.MAX_VALUE);
    while (!rows.isEmpty()) {
      List<Prepared.Masked> masked =
          rows.stream().flatMap(row -> masked(row, mask).stream()).toList();
      if (!masked.isEmpty()) {
        take(masked, mask, by, reason);
      }
      taken += masked.size();
      rows = before.apply(rows.get(rows.size() - 1).link().sequence());
    }
    return taken;
  }

  private static Optional<Prepared.Masked> masked(RecordTables.Row row, Mask mask) {
    ChainRecord record = ChainRecord.from(row.link().text());
    ChainRecord left = mask.of(record);
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
        new Withholding(AuditRecord.newId(), clock.instant(), by, reason, mask, taken), masked);
  }
}
