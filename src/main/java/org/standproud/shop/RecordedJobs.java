package org.standproud.shop;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.standproud.assessment.SetupInShort;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.records.DigestRecord;
import org.standproud.audit.records.Records;
import org.standproud.rules.card.Severity;
import org.standproud.rules.impact.PastJob;
import org.standproud.rules.impact.PastJob.Found;
import org.standproud.rules.impact.PastJobs;
import org.standproud.rules.trace.Kind;

/** The newest recorded assessments as past jobs; those whose evidence is withheld are left out. */
final class RecordedJobs implements PastJobs {

  private final Records records;
  private final long most;

  /**
   * Creates the source.
   *
   * @param records the records
   * @param most most jobs
   */
  RecordedJobs(Records records, long most) {
    this.records = records;
    this.most = most;
  }

  @Override
  public Stream<PastJob> open() {
    return records.digests().limit(most).map(RecordedJobs::job);
  }

  private static PastJob job(DigestRecord record) {
    Map<String, Found> findings = new HashMap<>();
    record.findings().forEach(f -> findings.put(f.cardId(), found(f)));
    return new PastJob(
        record.id().toString(),
        record.jobOrder(),
        () -> SetupInShort.evidence(record.numbers()),
        record.verdict(),
        findings);
  }

  private static Found found(RecordedFinding finding) {
    return new Found(
        finding.kind().equals(Kind.OPEN.words()) ? Kind.OPEN : Kind.FAIL,
        Severity.of(finding.severity()));
  }
}
