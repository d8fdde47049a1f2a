package org.standproud.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.GeneratedPages;
import org.standproud.IntegrationTest;
import org.standproud.api.RunningService;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * The contract in {@code api-docs/openapi.yaml} is the one made from the code, and the one that the
 * service serves. {@code mvn -Pregenerate verify} writes it anew.
 */
@IntegrationTest
class ContractTest {

  private static final Path COMMITTED = Path.of("api-docs/openapi.yaml");
  private static final JsonMapper JSON = JsonMapper.shared();

  private final RunningService service = RunningService.shared();
  private final JsonNode running = RunningService.json(service.get("/v3/api-docs"));

  @Test
  void theContractCommittedIsTheOneMadeFromTheCode(@TempDir Path records) throws IOException {
    String now = GeneratedContract.yaml(records);
    assertThat(now).startsWith("openapi: 3.1");
    if (GeneratedPages.areWritten()) {
      Files.writeString(COMMITTED, now);
    }
    assertThat(now).isEqualTo(Files.readString(COMMITTED));
  }

  @Test
  void theServiceServesTheContractAsYamlAndAsJson() throws IOException {
    HttpResponse<String> yaml = service.get("/v3/api-docs.yaml");
    assertThat(yaml.headers().firstValue("Content-Type")).hasValue("application/vnd.oai.openapi");
    if (!GeneratedPages.areWritten()) { // else the program was packed with the contract before
      assertThat(yaml.body()).isEqualTo(Files.readString(COMMITTED));
    }
    assertThat(running).isEqualTo(YAMLMapper.builder().build().readTree(yaml.body()));
  }

  @Test
  void everyFieldAndEveryOperationIsDescribed() {
    List<String> silent = new ArrayList<>();
    for (Map.Entry<String, JsonNode> schema : schemas().properties()) {
      collectSilent(schema.getKey(), schema.getValue(), silent);
    }
    running
        .get("paths")
        .forEach(
            path ->
                path.forEach(
                    operation -> {
                      if (!operation.hasNonNull("summary")) {
                        silent.add(operation.get("operationId").stringValue());
                      }
                    }));
    assertThat(silent).isEmpty();
    assertThat(running.get("openapi").stringValue()).startsWith("3.1");
  }

  static Stream<Path> setups() {
    return RunningService.seedFiles().stream();
  }

  @ParameterizedTest
  @MethodSource("setups")
  void everySetUpOfTheShopAndItsAnswerAreAsTheContractSays(Path file) {
    JsonNode request = JSON.readTree(RunningService.text(file));
    assertThat(faults("Setup", request)).isEmpty();
    JsonNode answer = RunningService.json(service.assess(request));
    assertThat(faults("AssessmentDocument", answer)).isEmpty();
    JsonNode links = answer.get("links");
    assertThat(faults("TraceDocument", fetched(links, "trace"))).isEmpty();
    assertThat(faults("EvidenceDocument", fetched(links, "evidence"))).isEmpty();
    JsonNode chance = get(links.get("self").stringValue() + "/chance?draws=100");
    assertThat(faults("HoldingChanceReport", chance)).isEmpty();
    assertThat(faults("RecommendationRemedies", fetched(links, "remedies"))).isEmpty();
    assertThat(faults("RecommendationOtherHolds", fetched(links, "otherHolds"))).isEmpty();
    assertThat(faults("RecommendationSensitivityReport", fetched(links, "questions"))).isEmpty();
  }

  @Test
  void anEnvelopeAPlanAndTwoSetUpsComparedAreAsTheContractSays() {
    String one =
        RunningService.json(service.assess(RunningService.seed("08"))).get("id").stringValue();
    String other =
        RunningService.json(service.assess(RunningService.seed("05"))).get("id").stringValue();
    String of = "/v1/assessments/" + one;
    assertThat(faults("RecommendationSafeEnvelope", get(of + "/envelope"))).isEmpty();
    assertThat(faults("RecommendationPassPlan", get(of + "/plan?remove=3"))).isEmpty();
    assertThat(faults("RecommendationComparedSetups", get(of + "/compare?with=" + other)))
        .isEmpty();
  }

  @Test
  void aListARuleBaseACardAndAProblemAreAsTheContractSays() {
    assertThat(faults("AssessmentList", get("/v1/assessments"))).isEmpty();
    JsonNode rules = get("/v1/rules");
    assertThat(faults("RuleList", rules)).isEmpty();
    for (JsonNode rule : rules.get("rules")) {
      assertThat(faults("RuleCard", get(rule.get("self").stringValue()))).isEmpty();
    }
    assertThat(faults("Problem", RunningService.json(service.assess("{}")))).isEmpty();
    assertThat(faults("Problem", RunningService.json(service.assess("{")))).isEmpty();
  }

  @Test
  void theExampleOfTheContractIsJudged() {
    JsonNode example =
        running.at("/paths/~1v1~1assessments/post/requestBody/content/application~1json/example");
    assertThat(service.assess(example).statusCode()).isEqualTo(201);
    assertThat(JSON.readTree(RunningService.text(Path.of("api-docs/examples/setup.json"))))
        .isEqualTo(example);
  }

  @Test
  void aSetUpWithAFieldTooManyIsNotAsTheContractSays() {
    ObjectNode request = RunningService.seed("01");
    ((ObjectNode) request.get("cut")).put("colour", "red");
    assertThat(faults("Setup", request)).isNotEmpty();
  }

  private JsonNode fetched(JsonNode links, String name) {
    return get(links.get(name).stringValue());
  }

  private JsonNode get(String path) {
    return RunningService.json(service.get(path));
  }

  private JsonNode schemas() {
    return running.get("components").get("schemas");
  }

  private List<Error> faults(String name, JsonNode value) {
    ObjectNode schema = JsonNodeFactory.instance.objectNode();
    schema.put("$ref", "#/components/schemas/" + name);
    schema.set("components", running.get("components"));
    Schema compiled =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(schema);
    return compiled.validate(value);
  }

  private static void collectSilent(String name, JsonNode schema, List<String> silent) {
    if (schema.has("properties")) {
      for (Map.Entry<String, JsonNode> property : schema.get("properties").properties()) {
        String here = name + "." + property.getKey();
        if (!property.getValue().hasNonNull("description")) {
          silent.add(here);
        }
        collectSilent(here, property.getValue(), silent);
      }
    }
    if (schema.has("items")) {
      collectSilent(name + ".*", schema.get("items"), silent);
    }
  }
}
