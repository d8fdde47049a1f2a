package org.standproud.assessment.recommendation;

import java.util.List;
import java.util.UUID;
import org.standproud.advice.Cautions;

/**
 * Counsel on a judged set-up, with the revision that judged every change in it and the cautions
 * that travel with every answer.
 *
 * @param assessment the assessment it is about
 * @param ruleBase revision of the rule base that every change was judged with
 * @param counsel what is advised
 * @param cautions the usual cautions
 */
public record Recommendation<T>(
    UUID assessment, String ruleBase, T counsel, List<String> cautions) {

  public Recommendation(UUID assessment, String ruleBase, T counsel) {
    this(assessment, ruleBase, counsel, Cautions.all());
  }
}
