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
 * A recorded job.
 *
 * @param record id of its record
 * @param jobOrder the job order, or null
 * @param evidence its evidence, read lazily; throws {@link IllegalArgumentException} if it cannot
 *     be read
 * @param verdict its recorded verdict
 * @param findings its recorded findings, by card id
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
   * Kind and severity of a finding.
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
