package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;

/** Cards edited in their folder while the service runs. */
@IntegrationTest
class RuleBaseTest {

  private static final Path REACH = Path.of("reach/REACH-001.yaml");

  private @TempDir Path audit;
  private @TempDir Path rules;

  @Test
  void withoutARuleBaseNothingIsReadyUntilTheCardsPass() throws IOException {
    put(REACH, "id: REACH-001\ntitle: broken\n");
    try (RunningService service = RunningService.start(audit, rules)) {
      HttpResponse<String> readiness = service.get("/actuator/health/readiness");
      assertThat(readiness.statusCode()).isEqualTo(503);
      JsonNode health =
          RunningService.json(readiness).get("components").get("ruleBase").get("details");
      assertThat(health.get("reason").stringValue()).isEqualTo("no rule base is in service");
      assertThat(health.get("cardErrors").intValue()).isGreaterThan(1);
      assertThat(health.get("firstCardError").stringValue()).startsWith(REACH + ":1:1:");
      assertThat(service.get("/actuator/health/liveness").statusCode()).isEqualTo(200);

      HttpResponse<String> refused = service.assess(RunningService.seed("01"));
      assertThat(refused.statusCode()).isEqualTo(503);
      assertThat(RunningService.json(refused).get("type").stringValue())
          .isEqualTo("/problems/not-ready");
      assertThat(service.get("/v1/rules").statusCode()).isEqualTo(503);

      copy(REACH);
      assertThat(reload(service).statusCode()).isEqualTo(200);
      assertThat(service.get("/actuator/health/readiness").statusCode()).isEqualTo(200);
      assertThat(service.assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
    }
  }

  @Test
  void anEditedCardServesOnceReloadedAndABrokenOneChangesNothing() throws IOException {
    copy(REACH);
    try (RunningService service = RunningService.start(audit, rules)) {
      String first = revision(service.assess(RunningService.seed("01")));
      assertThat(RunningService.json(reload(service)).get("changed").booleanValue()).isFalse();

      put(REACH, card().replace("no room: 0 mm", "no room: 0.5 mm"));
      assertThat(revision(service.assess(RunningService.seed("01")))).isEqualTo(first);
      JsonNode reloaded = RunningService.json(reload(service));
      String second = reloaded.get("revision").stringValue();
      assertThat(reloaded.get("changed").booleanValue()).isTrue();
      assertThat(second).isNotEqualTo(first);
      assertThat(revision(service.assess(RunningService.seed("01")))).isEqualTo(second);

      put(REACH, card().replace("height clearance < no room", "height clearence < no room"));
      HttpResponse<String> refused = reload(service);
      assertThat(refused.statusCode()).isEqualTo(422);
      JsonNode error = RunningService.json(refused).get("errors").get(0);
      List<String> lines = Files.readAllLines(rules.resolve(REACH));
      int line = error.get("line").intValue();
      assertThat(error.get("file").stringValue()).isEqualTo(REACH.toString());
      assertThat(lines.get(line - 1).substring(error.get("column").intValue() - 1))
          .startsWith("height clearence");
      assertThat(revision(service.assess(RunningService.seed("01")))).isEqualTo(second);
      assertThat(service.get("/actuator/health/readiness").statusCode()).isEqualTo(200);
    }
  }

  @Test
  void theSameFolderHasTheSameRevisionAfterARestart() throws IOException {
    copy(REACH);
    String first;
    try (RunningService service = RunningService.start(audit, rules)) {
      first = revision(service.assess(RunningService.seed("01")));
    }
    try (RunningService service = RunningService.start(audit, rules)) {
      assertThat(revision(service.assess(RunningService.seed("01")))).isEqualTo(first);
    }
  }

  @Test
  void aFolderThatIsNotThereLeavesTheServiceWaitingForIt() {
    try (RunningService service = RunningService.start(audit, rules.resolve("none"))) {
      assertThat(service.get("/actuator/health/readiness").statusCode()).isEqualTo(503);
      HttpResponse<String> refused = reload(service);
      assertThat(refused.statusCode()).isEqualTo(422);
      assertThat(refused.body()).contains("cannot be read").doesNotContain(rules.toString());
    }
  }

  @Test
  void aCardIsShownWithItsConditionsInWordsItsLimitsItsSourceAndItsExamples() {
    JsonNode card = RunningService.json(RunningService.shared().get("/v1/rules/REACH-001"));
    assertThat(card.get("card").get("severity").stringValue()).isEqualTo("stop");
    assertThat(card.get("limits").get("no room").stringValue()).isEqualTo("0 mm");
    assertThat(card.get("conditions").get(0).get("words").stringValue())
        .isEqualTo("height clearance is less than no room (0 mm)");
    assertThat(card.get("source").get("kind").stringValue()).isEqualTo("shop");
    assertThat(card.get("examples").size()).isGreaterThanOrEqualTo(3);
  }

  @Test
  void theRuleBaseInServiceListsEveryCardOfTheFolder() throws IOException {
    JsonNode rules = RunningService.json(RunningService.shared().get("/v1/rules")).get("rules");
    try (Stream<Path> files = Files.walk(Path.of("rules"))) {
      assertThat(rules.size())
          .isEqualTo(
              (int)
                  files
                      .filter(f -> f.getFileName().toString().matches("[A-Z]+-\\d+\\.yaml"))
                      .count());
    }
  }

  private static HttpResponse<String> reload(RunningService service) {
    return service.caller().post("/v1/rules/reload", "", "application/json");
  }

  private static String revision(HttpResponse<String> answer) {
    return RunningService.json(answer).get("versions").get("ruleBase").stringValue();
  }

  private static String card() throws IOException {
    return Files.readString(Path.of("rules").resolve(REACH));
  }

  private void copy(Path card) throws IOException {
    put(card, Files.readString(Path.of("rules").resolve(card)));
  }

  private void put(Path card, String text) throws IOException {
    Files.createDirectories(rules.resolve(card).getParent());
    Files.writeString(rules.resolve(card), text);
  }
}
