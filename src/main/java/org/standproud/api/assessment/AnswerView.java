package org.standproud.api.assessment;

import org.jspecify.annotations.Nullable;
import org.standproud.assessment.AssessmentSummary;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.refusal.BadParameterException;
import tools.jackson.databind.json.JsonMapper;

/** How much of an answer is returned. */
enum AnswerView {
  /** The whole answer, byte for byte as recorded. */
  FULL,
  /** An {@link AssessmentSummary}. */
  SUMMARY;

  static final String PARAMETER = "view";
  static final String DESCRIPTION =
      "full (the recorded answer) or summary (the verdict, the first findings and links, in less"
          + " than 2 kB)";

  private static final JsonMapper JSON = JsonMapper.shared();

  /**
   * Reads the parameter.
   *
   * @param word full or summary; full if absent
   * @throws BadParameterException for any other word
   */
  static AnswerView of(@Nullable String word) {
    if (word == null || word.equals("full")) {
      return FULL;
    }
    if (word.equals("summary")) {
      return SUMMARY;
    }
    throw new BadParameterException(PARAMETER, "must be full or summary");
  }

  /** The entity tag: the same for the same answer in the same view. */
  String tag(CanonicalJson answer) {
    return this == FULL ? answer.sha256() : answer.sha256() + "-summary";
  }

  /** The bytes to send. */
  byte[] bytes(CanonicalJson answer) {
    return this == FULL ? answer.utf8() : JSON.writeValueAsBytes(AssessmentSummary.of(answer));
  }
}
