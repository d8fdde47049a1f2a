package org.standproud.audit;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.NotCanonical;

/**
 * A removal or masking of texts of records: the chain records who did it, why, and what is left.
 *
 * @param id its id
 * @param time time of the removal
 * @param by who ordered it
 * @param reason the reason, such as the shop's retention rule
 * @param mask what was removed
 * @param taken the records affected
 */
public record Withholding(
    UUID id, Instant time, Person by, String reason, Mask mask, List<Taken> taken)
    implements ChainRecord {

  private static final String MARK = "\"type\":\"withholding\"";

  /**
   * One record that lost text.
   *
   * @param sequence its position
   * @param record its id
   * @param digest SHA-256 of the sealed text
   * @param remainder SHA-256 of the rest
   */
  public record Taken(long sequence, UUID record, String digest, String remainder) {

    /** Refuses an incomplete entry. */
    public Taken {
      Objects.requireNonNull(digest, "digest");
      Objects.requireNonNull(remainder, "remainder");
    }
  }

  /** Refuses an entry without a reason. */
  public Withholding {
    time = time.truncatedTo(ChronoUnit.MICROS);
    taken = List.copyOf(taken);
    Words.text("reason", reason);
  }

  @Override
  public CanonicalJson body() {
    return RecordType.WITHHOLDING.write(this);
  }

  /**
   * Reads a record if it is a withholding.
   *
   * @param body the text of any record
   */
  public static Optional<Withholding> in(CanonicalJson body) {
    // Most records are of other types; parsing each would double the cost of a check.
    if (!body.text().contains(MARK)) {
      return Optional.empty();
    }
    try {
      return ChainRecord.from(body) instanceof Withholding order
          ? Optional.of(order)
          : Optional.empty();
    } catch (NotCanonical e) {
      return Optional.empty();
    }
  }
}
