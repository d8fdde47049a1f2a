package org.standproud.audit;

/**
 * The result of one card, stored apart from the answer so that records can be found by rule.
 *
 * @param cardId stable id of the rule card
 * @param severity severity word: stop, caution or note
 * @param kind SARIF result kind: fail, pass, open or notApplicable
 */
public record RecordedFinding(String cardId, String severity, String kind) {

  /** Refuses words that cannot be searched for. */
  public RecordedFinding {
    Words.required("card id", cardId);
    Words.required("severity", severity);
    Words.required("kind", kind);
  }
}
