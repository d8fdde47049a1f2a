package org.standproud.rules.impact;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.card.Severity;
import org.standproud.rules.trace.CardOutcome;
import org.standproud.rules.trace.Kind;

/**
 * A job that was judged once.
 *
 * @param record id of its record
 * @param jobOrder the job order, or null if none was given
 * @param evidence the facts it was judged on, read by whoever judges it; throws {@link
 *     IllegalArgumentException} if they cannot be read
 * @param verdict the verdict it got
 * @param findings what was found then, by the id of the card
 */
public record PastJob(
    String record,
    @Nullable String jobOrder,
    Supplier<Evidence> evidence,
    String verdict,
    Map<String, Found> findings) {

  /** Copies the findings. */
  public PastJob {
    findings = Collections.unmodifiableMap(new TreeMap<>(findings));
  }

  /**
   * A finding, in short.
   *
   * @param kind fail or open
   * @param severity its severity
   */
  public record Found(Kind kind, Severity severity) {

    static Found of(CardOutcome outcome) {
      return new Found(outcome.kind(), outcome.severity());
    }
  }
}
