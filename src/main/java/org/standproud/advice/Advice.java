package org.standproud.advice;

import java.util.List;
import java.util.Map;

/**
 * What is answered about a set-up, in the caller's units.
 *
 * @param verdict what to do
 * @param summary the verdict in one sentence with what decided it
 * @param score 0 to 100
 * @param subScores the same for each thing that cards protect
 * @param findings what the cards have to say, gravest first
 * @param measureFirst what to measure or state, most wanted first
 * @param assumptions what was assumed for inputs that were not given
 * @param evidence every fact with its band
 * @param cautions the usual cautions
 */
public record Advice(
    Verdict verdict,
    String summary,
    int score,
    Map<String, Integer> subScores,
    List<Finding> findings,
    List<String> measureFirst,
    List<String> assumptions,
    List<Quantity> evidence,
    List<String> cautions) {

  /** Copies the lists. */
  public Advice {
    findings = List.copyOf(findings);
    measureFirst = List.copyOf(measureFirst);
    assumptions = List.copyOf(assumptions);
    evidence = List.copyOf(evidence);
    cautions = List.copyOf(cautions);
  }
}
