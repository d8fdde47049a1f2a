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
 * What is sent about a set-up, in the caller's units.
 *
 * @param id id of the assessment, to be printed on the traveler
 * @param time when it was made
 * @param job what it is for
 * @param units the units of its numbers, unless a number names its own
 * @param verdict what to do: run, run with care, do not run, not judged
 * @param summary the verdict in one sentence with what decided it
 * @param chance how likely the hold is to hold; absent if nothing has to hold or the formulas do
 *     not reach
 * @param score 0 to 100
 * @param subScores the same for each thing that cards protect
 * @param findings what the cards have to say, gravest first, and who answers for going on
 * @param measureFirst what to measure or state, most wanted first
 * @param assumptions what was taken for words of a shop and for inputs that were not given
 * @param evidence every fact with its band
 * @param cautions the usual cautions
 * @param versions what it was made with
 * @param links where to find it again, and what it stands on
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
   * Where to find an assessment and what it stands on.
   *
   * @param self the assessment
   * @param trace the result of every card and why
   * @param evidence every fact in SI units with its formula, inputs and assumptions
   * @param acceptances what people have decided about its findings by now
   * @param remedies the nearest set-ups that work
   * @param otherHolds other ways to hold the job
   * @param questions what to measure first
   * @param envelope how far the cut may go
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
