package org.standproud.assessment;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Advice;
import org.standproud.advice.Quantity;
import org.standproud.advice.Verdict;
import org.standproud.audit.Versions;
import org.standproud.audit.replay.AssessmentContext;
import org.standproud.setup.JobReference;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.SpokenAccount;

/**
 * The assessment of a set-up, in the caller's units.
 *
 * @param id id of the assessment (UUID version 7, RFC 9562); print it on the traveler
 * @param time time of the assessment
 * @param job the job, in ISA-95 terms, as sent
 * @param units the units of its numbers, unless a number names its own
 * @param verdict what to do: run, run with care, do not run, not judged. Never run while a fact is
 *     missing that a stop depends on.
 * @param summary the verdict with the deciding finding, its number, and what to do
 * @param chance how likely the hold is to hold; absent if nothing has to hold or the formulas do
 *     not apply
 * @param score 0 to 100. The verdict does not depend on it. An added or more severe finding never
 *     raises it.
 * @param subScores the score for each thing that cards protect
 * @param findings the findings of the cards, most severe first
 * @param measureFirst what to measure or state, most useful first
 * @param assumptions the assumptions for inputs that were not given, with their sources
 * @param evidence every fact with its band
 * @param cautions the cautions of every answer; show them
 * @param versions the versions that produced it; the same versions give the same answer to the same
 *     request
 * @param links links to the assessment and its details
 */
public record AssessmentDocument(
    UUID id,
    Instant time,
    JobReference job,
    UnitSystem units,
    Verdict verdict,
    String summary,
    @Nullable StatedChance chance,
    int score,
    Map<String, Integer> subScores,
    List<FindingDocument> findings,
    List<String> measureFirst,
    List<String> assumptions,
    List<Quantity> evidence,
    List<String> cautions,
    Versions versions,
    Links links) {

  /**
   * Links to an assessment and its details.
   *
   * @param self the assessment
   * @param trace the outcome of every card, with reasons
   * @param evidence every fact with its formula, inputs and assumptions
   * @param acceptances acceptances of its findings
   * @param remedies the nearest set-ups that work
   * @param otherHolds other ways to hold the job
   * @param questions what to measure first
   * @param envelope how far the cut may go, as numbers; add .svg for a drawing
   */
  public record Links(
      String self,
      String trace,
      String evidence,
      String acceptances,
      String remedies,
      String otherHolds,
      String questions,
      String envelope) {

    /** The links of an assessment. */
    static Links to(UUID id) {
      String self = "/v1/assessments/" + id;
      return new Links(
          self,
          self + "/trace",
          self + "/evidence",
          self + "/acceptances",
          self + "/remedies",
          self + "/other-holds",
          self + "/questions",
          self + "/envelope");
    }
  }

  static AssessmentDocument of(
      AssessmentContext occasion,
      Setup setup,
      Advice advice,
      @Nullable StatedChance chance,
      List<FindingDocument> findings) {
    return new AssessmentDocument(
        occasion.id(),
        occasion.time(),
        setup.job(),
        setup.units(),
        advice.verdict(),
        advice.summary(),
        chance,
        advice.score(),
        advice.subScores(),
        findings,
        advice.measureFirst(),
        Stream.concat(SpokenAccount.taken(setup).stream(), advice.assumptions().stream()).toList(),
        advice.evidence(),
        advice.cautions(),
        occasion.versions(),
        Links.to(occasion.id()));
  }
}
