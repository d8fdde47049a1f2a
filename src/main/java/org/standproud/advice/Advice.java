package org.standproud.advice;

import java.util.List;
import java.util.Map;

/**
 * The advice on a set-up, in the caller's units.
 *
 * @param verdict the verdict
 * @param summary the verdict in one sentence with the deciding finding
 * @param score 0 to 100
 * @param subScores the score for each thing that cards protect
 * @param findings the findings, most severe first
 * @param measureFirst what to measure or state, most useful first
 * @param assumptions the assumptions for inputs that were not given
 * @param evidence every fact with its band
 * @param cautions the cautions of every answer
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
