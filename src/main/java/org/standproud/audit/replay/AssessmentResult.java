package org.standproud.audit.replay;

import java.util.List;
import org.standproud.audit.Judged;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * An answer with what it stands on, as it goes into a record.
 *
 * @param setup the set-up
 * @param evidence the numbers computed from it
 * @param trace every card, fired or not
 * @param answer what is sent
 * @param judged the answer in short
 * @param findings the result of each card
 * @param numbers the evidence in short, as it lies beside the record
 */
public record AssessmentResult(
    CanonicalJson setup,
    CanonicalJson evidence,
    CanonicalJson trace,
    CanonicalJson answer,
    Judged judged,
    List<RecordedFinding> findings,
    byte[] numbers) {

  /** Copies the list. */
  public AssessmentResult {
    findings = List.copyOf(findings);
  }
}
