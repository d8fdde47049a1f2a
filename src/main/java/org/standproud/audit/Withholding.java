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
 * Texts of records are taken away or masked; who did it, why, and what is left stands in the chain.
 *
 * @param id its id
 * @param time when
 * @param by who did it
 * @param reason why, such as the shop's rule on how long records are kept
 * @param mask what was taken
 * @param taken the records concerned
 */
public record Withholding(
    UUID id, Instant time, Person by, String reason, Mask mask, List<Taken> taken)
    implements ChainRecord {

  private static final String MARK = "\"type\":\"withholding\"";

  /**
   * One record that lost text.
   *
   * @param sequence its place
   * @param record its id
   * @param digest SHA-256 of the text that was sealed
   * @param remainder SHA-256 of what is left of it
   */
  public record Taken(long sequence, UUID record, String digest, String remainder) {

    /** Refuses an entry with a part missing. */
    public Taken {
      Objects.requireNonNull(digest, "digest");
      Objects.requireNonNull(remainder, "remainder");
    }
  }

  /** Refuses one without a reason. */
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
   * Reads a record if it is one of these.
   *
   * @param body the text of any record
   */
  public static Optional<Withholding> in(CanonicalJson body) {
    // Most records are none; reading each as a tree would double the cost of a check.
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
