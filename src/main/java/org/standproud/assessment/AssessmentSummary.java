package org.standproud.assessment;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * An assessment in less than 2 kB, for a traveler or a dispatcher; read from the recorded answer.
 *
 * @param id id of the assessment; print it on the traveler
 * @param verdict what to do: run, run with care, do not run, not judged
 * @param summary the verdict with the deciding finding, its number, and what to do
 * @param score 0 to 100. The verdict does not depend on it.
 * @param holds the share of the draws in which the stock holds, 0 to 1; absent if nothing has to
 *     hold or the formulas do not apply
 * @param letsGo the share in which it lets go; absent likewise
 * @param findings the first three findings, most severe first
 * @param furtherFindings number of further findings
 * @param measureFirst what to measure first; absent if nothing is missing
 * @param caution the first caution of every answer; show it. The whole answer has all of them.
 * @param links links to the whole answer and the printed sheet
 */
public record AssessmentSummary(
    String id,
    String verdict,
    String summary,
    int score,
    @Nullable Double holds,
    @Nullable Double letsGo,
    List<FindingSummary> findings,
    int furtherFindings,
    @Nullable String measureFirst,
    String caution,
    SummaryLinks links) {

  private static final JsonMapper JSON = JsonMapper.shared();
  private static final int MOST_FINDINGS = 3;

  /** Copies the list. */
  public AssessmentSummary {
    findings = List.copyOf(findings);
  }

  /**
   * The finding of one card.
   *
   * @param card id of the card, the reason code
   * @param severity stop, caution or note
   * @param kind fail, or open if it could not be judged
   * @param share the share of the draws in which it happens, 0 to 1; 0 if not known
   * @param message message for the machinist, in the caller's units
   */
  public record FindingSummary(
      String card, String severity, String kind, double share, String message) {}

  /**
   * Links.
   *
   * @param self the whole answer
   * @param sheet the sheet for the machine, a PDF
   */
  public record SummaryLinks(String self, String sheet) {}

  /**
   * Summarizes an answer.
   *
   * @param answer the recorded answer
   */
  public static AssessmentSummary of(CanonicalJson answer) {
    JsonNode whole = JSON.readTree(answer.utf8());
    JsonNode findings = whole.path("findings");
    JsonNode chance = whole.path("chance");
    String id = whole.path("id").asString();
    return new AssessmentSummary(
        id,
        whole.path("verdict").asString(),
        whole.path("summary").asString(),
        whole.path("score").asInt(),
        share(chance.path("holds")),
        share(chance.path("letsGo")),
        findings.valueStream().limit(MOST_FINDINGS).map(AssessmentSummary::finding).toList(),
        Math.max(0, findings.size() - MOST_FINDINGS),
        first(whole.path("measureFirst")),
        whole.path("cautions").path(0).asString(),
        new SummaryLinks(
            whole.path("links").path("self").asString(), "/assessments/" + id + "/sheet.pdf"));
  }

  private static FindingSummary finding(JsonNode finding) {
    return new FindingSummary(
        finding.path("card").asString(),
        finding.path("severity").asString(),
        finding.path("kind").asString(),
        finding.path("share").asDouble(),
        finding.path("message").asString());
  }

  private static @Nullable Double share(JsonNode share) {
    return share.isNumber() ? share.asDouble() : null;
  }

  private static @Nullable String first(JsonNode texts) {
    return texts.isEmpty() ? null : texts.path(0).asString();
  }
}
