package org.standproud.audit.replay;

import java.util.List;
import java.util.UUID;
import org.standproud.audit.Judged;

/**
 * A recorded set-up judged by another rule base.
 *
 * @param record id of the assessment
 * @param recordedRuleBase the revision that judged it then
 * @param ruleBase the revision that judges it now
 * @param recorded verdict and score then
 * @param now verdict and score now
 * @param findings findings that differ
 * @param versions versions, apart from the rule base, that differ from the record and so may
 *     contribute
 * @param evidence where the numbers differ; empty if only the rule base makes the difference
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

  /** Whether verdict and score are the same. */
  public boolean same() {
    return findings.isEmpty() && recorded.equals(now);
  }
}
