package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Assessments as SARIF 2.1.0 (OASIS), held to the published schema, which lies with its source in
 * src/test/resources/sarif [found].
 */
@IntegrationTest
class SarifTest {

  private static final Schema SARIF = schema();
  private static final Map<String, String> LEVELS =
      Map.of("stop", "error", "caution", "warning", "note", "note");

  private final RunningService service = RunningService.shared();

  static Stream<Path> setups() {
    return RunningService.seedFiles().stream();
  }

  @ParameterizedTest
  @MethodSource("setups")
  void everyAssessmentOfTheShopIsAsThePublishedSchemaSays(Path file) {
    JsonNode answer = RunningService.json(service.assess(RunningService.text(file)));
    JsonNode log = log(answer);
    List<Error> faults = SARIF.validate(log);
    assertThat(faults).isEmpty();
    assertThat(log.at("/runs/0/properties/ruleBase")).isEqualTo(answer.at("/versions/ruleBase"));
  }

  @Test
  void everyFindingIsAResultWithItsKindLevelMessageAndNumbers() {
    JsonNode answer = RunningService.json(service.assess(RunningService.seed("03")));
    JsonNode run = log(answer).at("/runs/0");
    Map<String, JsonNode> results =
        run.get("results")
            .valueStream()
            .collect(Collectors.toMap(r -> r.get("ruleId").stringValue(), r -> r));
    for (JsonNode finding : answer.get("findings")) {
      JsonNode result = results.get(finding.get("card").stringValue());
      assertThat(result.get("kind")).isEqualTo(finding.get("kind"));
      assertThat(result.get("level").stringValue())
          .isEqualTo(
              finding.get("kind").stringValue().equals("fail")
                  ? LEVELS.get(finding.get("severity").stringValue())
                  : "none");
      assertThat(result.at("/message/text")).isEqualTo(finding.get("message"));
      assertThat(result.at("/properties/values")).isEqualTo(finding.get("values"));
      JsonNode rule = run.at("/tool/driver/rules").get(result.get("ruleIndex").intValue());
      assertThat(rule.get("id")).isEqualTo(finding.get("card"));
      assertThat(rule.at("/help/text").stringValue())
          .contains(finding.get("why").stringValue())
          .contains(finding.get("remedy").stringValue());
      // CommonMark 0.31, section 2.4: punctuation behind a backslash means nothing.
      assertThat(rule.at("/help/markdown").stringValue())
          .contains("Source\\: ")
          .doesNotContainPattern("(?<!\\\\)[(\\[<:]");
    }
    assertThat(results.values())
        .extracting(r -> r.get("kind").stringValue())
        .contains("fail", "pass", "notApplicable");
  }

  @Test
  void theFingerprintStaysWithCardAndSetUpWhateverTheJobAndGoesWithTheSetUp() {
    ObjectNode setup = RunningService.seed("03");
    JsonNode first = log(RunningService.json(service.assess(setup)));
    ((ObjectNode) setup.get("job")).put("jobOrder", "another");
    JsonNode again = log(RunningService.json(service.assess(setup)));
    ((ObjectNode) setup.get("hold")).put("gripDepth", 11);
    JsonNode other = log(RunningService.json(service.assess(setup)));

    assertThat(fingerprints(again)).isEqualTo(fingerprints(first)).doesNotHaveDuplicates();
    assertThat(fingerprints(other)).doesNotContainAnyElementsOf(fingerprints(first));
  }

  @Test
  void anAcceptedFindingIsASuppressedResultThatKeepsItsKind() {
    ObjectNode setup = RunningService.seed("03");
    ((ObjectNode) setup.get("job")).put("jobOrder", "SARIF-" + UUID.randomUUID());
    JsonNode answer = RunningService.json(service.assess(setup));
    String card = answer.at("/findings/0/card").stringValue();
    String expires = java.time.Instant.now().plusSeconds(86_400).toString();
    service
        .caller()
        .post(
            answer.at("/links/acceptances").stringValue(),
            ("{\"card\":\"%s\",\"reason\":\"tried twice\",\"by\":{\"name\":\"M. Weaver\","
                    + "\"role\":\"foreman\"},\"expires\":\"%s\",\"forJobOrder\":true}")
                .formatted(card, expires),
            "application/json");

    JsonNode log = log(RunningService.json(service.assess(setup)));
    assertThat(SARIF.validate(log)).isEmpty();
    JsonNode result =
        log.at("/runs/0/results")
            .valueStream()
            .filter(r -> r.get("ruleId").stringValue().equals(card))
            .findFirst()
            .orElseThrow();
    assertThat(result.at("/suppressions/0/status").stringValue()).isEqualTo("accepted");
    assertThat(result.at("/suppressions/0/justification").stringValue()).isEqualTo("tried twice");
    assertThat(result.get("kind")).isEqualTo(answer.at("/findings/0/kind"));
  }

  @Test
  void anAssessmentThatIsNotThereHasNoLog() {
    assertThat(service.get("/v1/assessments/" + UUID.randomUUID() + "/sarif").statusCode())
        .isEqualTo(404);
  }

  private JsonNode log(JsonNode answer) {
    HttpResponse<String> log = service.get(answer.at("/links/self").stringValue() + "/sarif");
    assertThat(log.statusCode()).as(log.body()).isEqualTo(200);
    assertThat(log.headers().firstValue("Content-Type")).hasValue("application/sarif+json");
    return RunningService.json(log);
  }

  private static List<String> fingerprints(JsonNode log) {
    return log.at("/runs/0/results")
        .valueStream()
        .map(r -> r.at("/fingerprints/setupAndCard~1v1").stringValue())
        .toList();
  }

  private static Schema schema() {
    try (InputStream text = SarifTest.class.getResourceAsStream("/sarif/sarif-schema-2.1.0.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4)
          .getSchema(JsonMapper.shared().readTree(text));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
