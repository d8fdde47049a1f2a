package org.standproud.assessment.recommendation;

import java.util.List;
import java.util.UUID;
import org.standproud.advice.Cautions;

/**
 * A recommendation for an assessed set-up.
 *
 * @param assessment id of the assessment
 * @param ruleBase revision of the rule base that judged every change
 * @param recommendation the recommendation
 * @param cautions the cautions of every answer; show them
 */
public record Recommendation<T>(
    UUID assessment, String ruleBase, T recommendation, List<String> cautions) {

  public Recommendation(UUID assessment, String ruleBase, T recommendation) {
    this(assessment, ruleBase, recommendation, Cautions.all());
  }
}
