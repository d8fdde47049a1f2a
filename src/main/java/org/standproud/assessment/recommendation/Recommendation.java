package org.standproud.assessment.recommendation;

import java.util.List;
import java.util.UUID;
import org.standproud.advice.Cautions;

/**
 * A recommendation on an assessed set-up, with the revision that judged every change in it and the
 * cautions that go with every answer.
 *
 * @param assessment the assessment it is about
 * @param ruleBase revision of the rule base that every change was judged with
 * @param recommendation what is recommended
 * @param cautions the usual cautions
 */
public record Recommendation<T>(
    UUID assessment, String ruleBase, T recommendation, List<String> cautions) {

  public Recommendation(UUID assessment, String ruleBase, T recommendation) {
    this(assessment, ruleBase, recommendation, Cautions.all());
  }
}
