package org.standproud.api.assessment;

import org.jspecify.annotations.Nullable;
import org.standproud.assessment.AssessmentSummary;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.refusal.BadParameterException;
import tools.jackson.databind.json.JsonMapper;

/** How much of an answer a caller asks for. */
enum AnswerView {
  /** The whole answer, byte for byte as it is recorded. */
  FULL,
  /** An {@link AssessmentSummary}. */
  SUMMARY;

  static final String PARAMETER = "view";
  static final String DESCRIPTION =
      "full, as it is recorded, or summary: the verdict, the first findings and where the rest is,"
          + " in less than 2 kB";

  private static final JsonMapper JSON = JsonMapper.shared();

  /**
   * Reads the parameter.
   *
   * @param word full or summary; full if it is not given
   * @throws BadParameterException if it is another word
   */
  static AnswerView of(@Nullable String word) {
    if (word == null || word.equals("full")) {
      return FULL;
    }
    if (word.equals("summary")) {
      return SUMMARY;
    }
    throw new BadParameterException(PARAMETER, "it is full or summary");
  }

  /** What names the bytes: the same for the same answer in the same view. */
  String tag(CanonicalJson answer) {
    return this == FULL ? answer.sha256() : answer.sha256() + "-summary";
  }

  /** The bytes to send. */
  byte[] bytes(CanonicalJson answer) {
    return this == FULL ? answer.utf8() : JSON.writeValueAsBytes(AssessmentSummary.of(answer));
  }
}
