package org.standproud.audit.records;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.RecordedFinding;

/**
 * What is needed of a record to judge it again.
 *
 * @param id its id
 * @param jobOrder the job order, or null
 * @param verdict the recorded verdict
 * @param findings the recorded findings
 * @param numbers the digest from {@link EvidenceDigest}
 */
public record DigestRecord(
    UUID id,
    @Nullable String jobOrder,
    String verdict,
    List<RecordedFinding> findings,
    byte[] numbers) {

  /** Copies the findings. */
  public DigestRecord {
    findings = List.copyOf(findings);
  }
}
