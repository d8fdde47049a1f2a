package org.standproud.audit.replay;

import java.util.List;
import org.standproud.audit.Judged;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * An answer with its inputs, as recorded.
 *
 * @param setup the set-up
 * @param results what was computed and judged, in short
 * @param answer the answer as sent
 * @param judged verdict and score
 * @param findings the result of each card
 * @param numbers the digest of the evidence
 */
public record AssessmentResult(
    CanonicalJson setup,
    CanonicalJson results,
    CanonicalJson answer,
    Judged judged,
    List<RecordedFinding> findings,
    byte[] numbers) {

  /** Copies the list. */
  public AssessmentResult {
    findings = List.copyOf(findings);
  }
}
