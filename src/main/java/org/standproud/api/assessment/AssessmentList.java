package org.standproud.api.assessment;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.Versions;
import org.standproud.audit.records.RecordPage;
import org.standproud.audit.records.RecordSummary;

/**
 * A page of assessments, newest first.
 *
 * @param assessments the assessments
 * @param next cursor for the next page; absent on the last page
 */
record AssessmentList(List<AssessmentLine> assessments, @Nullable String next) {

  /**
   * A summary line of an assessment.
   *
   * @param id its id
   * @param time time of the assessment
   * @param jobOrder ISA-95 job order
   * @param workMaster ISA-95 work master
   * @param operation operation of the job
   * @param machine name of the machine
   * @param caller the caller
   * @param verdict the verdict in words
   * @param score 0 to 100
   * @param versions the versions that produced it
   * @param sequence its position in the chain of records
   * @param self link to it
   */
  record AssessmentLine(
      UUID id,
      Instant time,
      @Nullable String jobOrder,
      @Nullable String workMaster,
      @Nullable String operation,
      @Nullable String machine,
      String caller,
      String verdict,
      @Nullable Double score,
      Versions versions,
      long sequence,
      String self) {}

  static AssessmentList of(RecordPage page) {
    return new AssessmentList(
        page.records().stream().map(AssessmentList::line).toList(), page.next());
  }

  private static AssessmentLine line(RecordSummary r) {
    return new AssessmentLine(
        r.stored().id(),
        r.time(),
        r.asked().jobOrder(),
        r.asked().workMaster(),
        r.asked().operation(),
        r.asked().machine(),
        r.asked().caller(),
        r.judged().verdict(),
        r.judged().score(),
        r.versions(),
        r.stored().sequence(),
        "/v1/assessments/" + r.stored().id());
  }
}
