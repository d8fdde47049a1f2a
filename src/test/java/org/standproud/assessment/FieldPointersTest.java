package org.standproud.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.RequestContract;
import org.standproud.advice.DemoShop;
import org.standproud.advice.compare.FieldChange;
import org.standproud.advice.compare.SetupFields;
import org.standproud.advice.sensitivity.MeasurementSuggestion;
import org.standproud.advice.sensitivity.SensitivityReport;
import org.standproud.audit.Versions;
import org.standproud.audit.canonical.PlainJson;
import org.standproud.audit.replay.AssessmentContext;
import org.standproud.audit.replay.AssessmentResult;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.sampling.Unknown;
import org.standproud.setup.request.FieldPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Whatever an answer points at is a field of the request: RFC 6901 in the committed contract. */
class FieldPointersTest {

  private static final JsonMapper JSON = new JsonMapper();

  static List<String> names() {
    return DemoShop.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyPointerOfAnAnswerLeadsToAField(String name) {
    AssessmentContext context =
        new AssessmentContext(
            new UUID(0, 1),
            Instant.parse("2026-11-30T08:00:00Z"),
            new Versions("rules", "catalogue", "test"),
            List.of());
    AssessmentResult result =
        new AssessmentPipeline(EvidenceGathering::jointly)
            .make(DemoShop.setup(name), DemoShop.CARDS, context);
    EvidenceDocument evidence = EvidenceDocument.of(EvidenceGathering.of(DemoShop.setup(name)));
    Set<String> pointers = new TreeSet<>();
    collect(JSON.readTree(PlainJson.canonical(evidence).text()), pointers);
    assertThat(pointers).hasSizeGreaterThan(15);
    JsonNode answer = JSON.readTree(result.answer().text());
    collect(answer, pointers);
    answer.path("assumptions").forEach(line -> pointers.add(line.stringValue().split(":")[0]));
    assertThat(pointers).allMatch(RequestContract::has);
  }

  private static void collect(JsonNode node, Collection<String> pointers) {
    node.properties()
        .forEach(
            member -> {
              if (member.getKey().equals("input")) {
                pointers.add(member.getValue().stringValue());
              } else if (member.getKey().equals("inputs")) {
                member.getValue().forEach(input -> pointers.add(input.stringValue()));
              }
            });
    node.forEach(inner -> collect(inner, pointers));
  }

  @Test
  void whatIsUnknownComesInByAField() {
    assertThat(Unknown.values()).allMatch(unknown -> RequestContract.has(unknown.input().text()));
  }

  @Test
  void aQuestionPointsAtTheFieldOfItsAnswer() {
    assertThat(SensitivityReport.of(DemoShop.setup("12"), DemoShop.CARDS).questions())
        .extracting(MeasurementSuggestion::input)
        .map(FieldPointer::text)
        .isNotEmpty()
        .allMatch(RequestContract::has);
  }

  @Test
  void aChangePointsAtItsField() {
    assertThat(
            names().stream()
                .flatMap(
                    name ->
                        SetupFields.changes(DemoShop.setup("01"), DemoShop.setup(name)).stream()))
        .extracting(FieldChange::field)
        .map(FieldPointer::text)
        .isNotEmpty()
        .allMatch(RequestContract::has);
  }

  @Test
  void aPathWithDotsLeadsNowhere() {
    assertThat(Stream.of("hold.gripDepth", "/hold/nothing", "/machine/tram", "/clamp"))
        .noneMatch(RequestContract::has);
    assertThat(RequestContract.has("/stock/material/density")).isTrue();
  }
}
