package org.standproud.audit.records;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.RecordedFinding;

/**
 * What judging an answer again needs of its record.
 *
 * @param id its id
 * @param jobOrder the job order, null if none was given
 * @param verdict the verdict it got
 * @param findings what the cards said
 * @param numbers what {@link EvidenceDigest} made of it
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
