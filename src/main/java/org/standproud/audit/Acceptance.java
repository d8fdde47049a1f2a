package org.standproud.audit;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * A signed decision to run in spite of a finding, until a given time. It changes no verdict and
 * hides no finding; it is shown beside it.
 *
 * @param id its id
 * @param time time of the acceptance
 * @param assessment id of the assessment with the finding
 * @param jobOrder job order of that assessment, null when it named none
 * @param card card of the finding
 * @param severity severity of the finding at that time
 * @param said the recorded result of the card, with the numbers it read
 * @param by the person who signs it off
 * @param reason the reason
 * @param expires expiry; at most {@link #LONGEST} later
 * @param forJobOrder whether it covers later assessments of the same job order too
 */
public record Acceptance(
    UUID id,
    Instant time,
    UUID assessment,
    @Nullable String jobOrder,
    String card,
    String severity,
    CanonicalJson said,
    Person by,
    String reason,
    Instant expires,
    boolean forJobOrder)
    implements ChainRecord {

  /** Longest time before the finding has to be reviewed: a year. Common practice, no source. */
  public static final Duration LONGEST = Duration.ofDays(366);

  /**
   * Refuses an acceptance without a reason, without an end, or for a job order that is not named.
   */
  public Acceptance {
    time = time.truncatedTo(ChronoUnit.MICROS);
    expires = expires.truncatedTo(ChronoUnit.MICROS);
    Words.required("card", card);
    Words.required("severity", severity);
    Words.text("reason", reason);
    if (!expires.isAfter(time) || expires.isAfter(time.plus(LONGEST))) {
      throw new IllegalArgumentException(
          "expires must be in the future, at most " + LONGEST.toDays() + " days after");
    }
    if (forJobOrder && jobOrder == null) {
      throw new IllegalArgumentException("the assessment names no job order to accept it for");
    }
  }

  @Override
  public CanonicalJson body() {
    return RecordType.ACCEPTANCE.write(this);
  }
}
