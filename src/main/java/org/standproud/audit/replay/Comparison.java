package org.standproud.audit.replay;

import java.util.List;
import java.util.UUID;
import org.standproud.audit.Judged;

/**
 * A recorded set-up judged by another rule base.
 *
 * @param record id of the record
 * @param recordedRuleBase the revision that judged then
 * @param ruleBase the revision that judges now
 * @param recorded verdict and score then
 * @param now verdict and score now
 * @param findings findings that are not the same
 * @param versions versions other than the rule base that are not those of the record, and so may
 *     have a part in it
 * @param evidence where the numbers differ; none when only the rule base made the difference
 */
public record Comparison(
    UUID record,
    String recordedRuleBase,
    String ruleBase,
    Judged recorded,
    Judged now,
    List<ChangedFinding> findings,
    List<VersionDifference> versions,
    List<Difference> evidence) {

  /** Copies the lists. */
  public Comparison {
    findings = List.copyOf(findings);
    versions = List.copyOf(versions);
    evidence = List.copyOf(evidence);
  }

  /** Whether the set-up is judged as it was. */
  public boolean same() {
    return findings.isEmpty() && recorded.equals(now);
  }
}
