package org.standproud.api.sarif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.standproud.assessment.ResultsInShort;
import org.standproud.assessment.ResultsInShort.CardInShort;
import org.standproud.audit.Asked;
import org.standproud.audit.AuditRecord;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.Source;
import org.standproud.rules.trace.Kind;
import tools.jackson.databind.JsonNode;

/**
 * One assessment as a SARIF 2.1.0 log with one run: every card as a rule, and its outcome as a
 * result: failed, passed, open or not applicable. It reports the recorded outcome; only the help
 * texts come from the cards, at that revision.
 */
final class SarifLog {

  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  private final AuditRecord record;
  private final List<Card> cards;
  private final Fingerprint fingerprint;
  private final Map<String, JsonNode> findings = new LinkedHashMap<>();

  /**
   * Creates the log of a record.
   *
   * @param record the record, with its payload
   * @param cards the cards of its rule base, by id
   */
  SarifLog(AuditRecord record, List<Card> cards) {
    this.record = record;
    this.fingerprint = new Fingerprint(record);
    this.cards = cards.stream().filter(Card::flags).toList();
    for (JsonNode finding : record.account().answer().tree().path("findings")) {
      findings.put(finding.path("card").asString(), finding);
    }
  }

  /** Returns the log as a JSON tree. */
  Map<String, Object> written() {
    return Map.of("$schema", SCHEMA, "version", "2.1.0", "runs", List.of(run()));
  }

  private Map<String, Object> run() {
    Map<String, Object> run = new LinkedHashMap<>();
    run.put("tool", Map.of("driver", driver()));
    // The schema's guid rejects UUID version 7, so ids go where any text is allowed.
    run.put("automationDetails", Map.of("id", "standproud/" + record.id()));
    run.put(
        "invocations",
        List.of(Map.of("executionSuccessful", true, "endTimeUtc", record.time().toString())));
    run.put("results", results());
    run.put("properties", properties());
    return run;
  }

  private Map<String, Object> driver() {
    return Map.of(
        "name",
        "Standproud",
        "version",
        record.versions().engine(),
        "rules",
        cards.stream().map(SarifLog::rule).toList());
  }

  private static Map<String, Object> rule(Card card) {
    Map<String, Object> rule = new LinkedHashMap<>();
    rule.put("id", card.id().text());
    rule.put("shortDescription", text(card.title()));
    rule.put("fullDescription", text(card.why()));
    rule.put("help", help(card));
    rule.put("defaultConfiguration", Map.of("level", level(card.severity()), "enabled", true));
    rule.put(
        "properties",
        Map.of("protects", card.protects().words(), "confidence", card.confidence().words()));
    return rule;
  }

  private static Map<String, Object> help(Card card) {
    String source = source(card.source());
    String plain = card.why() + "\n\n" + card.remedy() + "\n\n" + source;
    String marked =
        PlainMarkdown.of(card.why())
            + "\n\n**"
            + PlainMarkdown.of(card.remedy())
            + "**\n\n"
            + PlainMarkdown.of(source);
    return Map.of("text", plain, "markdown", marked);
  }

  private static String source(Source source) {
    return List.of(source.kind().words(), source.reference(), source.edition(), source.page())
        .stream()
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(", ", "Source: ", "."));
  }

  private List<Map<String, Object>> results() {
    List<Map<String, Object>> results = new ArrayList<>();
    Map<String, CardInShort> outcomes = ResultsInShort.read(record.account().results()).cards();
    for (int i = 0; i < cards.size(); i++) {
      CardInShort outcome = outcomes.get(cards.get(i).id().text());
      if (outcome != null) {
        results.add(result(cards.get(i), i, outcome));
      }
    }
    return results;
  }

  private Map<String, Object> result(Card card, int index, CardInShort outcome) {
    String id = card.id().text();
    JsonNode finding = findings.get(id);
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("ruleId", id);
    result.put("ruleIndex", index);
    result.put("kind", outcome.kind().words());
    // SARIF 2.1.0, 3.27.10: only what fails has a level.
    result.put("level", outcome.kind() == Kind.FAIL ? level(outcome.severity()) : "none");
    result.put(
        "message", text(finding == null ? card.title() : finding.path("message").asString()));
    List<Map<String, Object>> places = places(record.asked());
    if (!places.isEmpty()) {
      result.put("locations", List.of(Map.of("logicalLocations", places)));
    }
    result.put("fingerprints", Map.of("setupAndCard/v1", fingerprint.of(id)));
    result.put("properties", numbers(outcome, finding));
    suppressions(finding, result);
    return result;
  }

  /** The facts the card read, as answered, in the caller's units. */
  private static Map<String, Object> numbers(CardInShort outcome, @Nullable JsonNode finding) {
    Map<String, Object> numbers = new LinkedHashMap<>();
    numbers.put("severity", outcome.severity().words());
    numbers.put("truth", outcome.truth().words());
    if (finding != null) {
      for (String name : List.of("values", "distance", "measure", "confidence", "remedy")) {
        if (finding.has(name)) {
          numbers.put(name, finding.get(name));
        }
      }
    }
    return numbers;
  }

  /** An acceptance neither hides the result nor changes it; a tool may show it as suppressed. */
  private static void suppressions(@Nullable JsonNode finding, Map<String, Object> result) {
    if (finding == null || !finding.has("acceptances")) {
      return;
    }
    List<Map<String, Object>> suppressions = new ArrayList<>();
    for (JsonNode given : finding.get("acceptances")) {
      suppressions.add(
          Map.of(
              "kind",
              "external",
              "status",
              given.path("state").asString().equals("in force") ? "accepted" : "rejected",
              "justification",
              given.path("reason").asString(),
              "properties",
              Map.of(
                  "acceptance",
                  given.path("id"),
                  "by",
                  given.path("by"),
                  "expires",
                  given.path("expires"))));
    }
    result.put("suppressions", suppressions);
  }

  private static List<Map<String, Object>> places(Asked asked) {
    List<Map<String, Object>> places = new ArrayList<>();
    place("job order", asked.jobOrder(), places);
    place("work master", asked.workMaster(), places);
    place("operation", asked.operation(), places);
    place("machine", asked.machine(), places);
    return places;
  }

  private static void place(String kind, @Nullable String name, List<Map<String, Object>> places) {
    if (name != null) {
      places.add(Map.of("name", name, "kind", kind));
    }
  }

  private Map<String, Object> properties() {
    Map<String, Object> properties = new LinkedHashMap<>();
    properties.put("verdict", record.judged().verdict());
    properties.put("score", Objects.requireNonNullElse(record.judged().score(), 0.0));
    properties.put("ruleBase", record.versions().ruleBase());
    properties.put("catalogue", record.versions().catalogue());
    properties.put("engine", record.versions().engine());
    properties.put("assessment", "/v1/assessments/" + record.id());
    return properties;
  }

  private static String level(Severity severity) {
    return switch (severity) {
      case STOP -> "error";
      case CAUTION -> "warning";
      case NOTE -> "note";
    };
  }

  private static Map<String, Object> text(String text) {
    return Map.of("text", text);
  }
}
