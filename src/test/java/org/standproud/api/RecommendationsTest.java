package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.IntegrationTest;
import org.standproud.mechanics.sampling.SamplingPlan;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What a shop system may ask of an assessment beyond its verdict. */
@IntegrationTest
class RecommendationsTest {

  private final RunningService service = RunningService.shared();

  @ParameterizedTest
  @ValueSource(strings = {"remedies", "other-holds", "questions", "envelope", "plan?remove=2"})
  void recommendationsNameTheRevisionThatJudgedThemAndCarryTheCautions(String what) {
    String id = assess("08");
    HttpResponse<String> answer = service.get("/v1/assessments/" + id + "/" + what);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    JsonNode said = RunningService.json(answer);
    assertThat(said.get("assessment").stringValue()).isEqualTo(id);
    assertThat(said.get("ruleBase").stringValue()).isNotBlank();
    assertThat(said.get("cautions").size()).isPositive();
    assertThat(said.get("recommendation").size()).isPositive();
  }

  @Test
  void aWireLaidTooDeepIsPutRightAndTheRemedyWasJudged() {
    JsonNode said =
        RunningService.json(service.get("/v1/assessments/" + assess("08") + "/remedies"));
    JsonNode ways = said.get("recommendation").get("ways");
    assertThat(ways.size()).isPositive();
    for (JsonNode way : ways) {
      assertThat(way.get("verdict").stringValue()).isIn("run", "run with care");
    }
  }

  @Test
  void theEnvelopeIsDrawn() {
    HttpResponse<String> answer = service.get("/v1/assessments/" + assess("02") + "/envelope.svg");
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.headers().firstValue("Content-Type")).hasValue("image/svg+xml");
    assertThat(answer.body()).contains("<svg").doesNotContain("NaN");
  }

  @Test
  void twoAssessmentsAreCompared() {
    String shallow = assess("03");
    String deep = assess("01");
    HttpResponse<String> answer =
        service.get("/v1/assessments/" + shallow + "/compare?with=" + deep);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    assertThat(answer.body()).contains("grip");
  }

  @Test
  void stockThatCannotBeMeantIsRefusedWithItsRangeAndAnUnknownAssessmentIsNotThere() {
    HttpResponse<String> tooMuch =
        service.get("/v1/assessments/" + assess("01") + "/plan?remove=5000");
    assertThat(tooMuch.statusCode()).isEqualTo(400);
    assertThat(tooMuch.body()).contains("remove").contains("200").contains("mm");
    assertThat(service.get("/v1/assessments/" + UUID.randomUUID() + "/remedies").statusCode())
        .isEqualTo(404);
  }

  @Test
  void theChanceOfHoldingComesWithItsErrorItsSeedAndWhatToMeasureFirst() {
    String id = assess("12");
    String address = "/v1/assessments/" + id + "/chance";
    HttpResponse<String> answer = service.get(address + "?draws=500&seed=7");
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    JsonNode said = RunningService.json(answer);
    assertThat(said.get("assessment").stringValue()).isEqualTo(id);
    double probability = said.get("probability").doubleValue();
    assertThat(probability).isBetween(0.01, 0.99);
    // The binomial error at the share that Laplace's rule of succession gives, textbook formulas.
    double share = (500 * probability + 1) / 502;
    assertThat(said.get("standardError").doubleValue())
        .isCloseTo(Math.sqrt(share * (1 - share) / 500), withinPercentage(0.1));
    assertThat(said.get("draws").intValue()).isEqualTo(500);
    assertThat(said.get("seed").longValue()).isEqualTo(7);
    JsonNode first = said.get("measureFirst");
    assertThat(first.size()).isGreaterThan(2);
    for (int i = 1; i < first.size(); i++) {
      assertThat(first.get(i).get("share").doubleValue())
          .isLessThanOrEqualTo(first.get(i - 1).get("share").doubleValue());
    }
    assertThat(first.get(0).get("input").stringValue()).isNotBlank();
    assertThat(service.get(address + "?draws=500&seed=7").body()).isEqualTo(answer.body());
    assertThat(service.get(address + "?draws=500&seed=8").body()).isNotEqualTo(answer.body());
  }

  @Test
  void withoutParametersTheUsualNumberOfSetUpsIsDrawn() {
    JsonNode said = RunningService.json(service.get("/v1/assessments/" + assess("01") + "/chance"));
    assertThat(said.get("draws").intValue()).isEqualTo(SamplingPlan.USUAL.samples());
    assertThat(said.get("seed").longValue()).isEqualTo(SamplingPlan.USUAL.seed());
    assertThat(said.get("probability").doubleValue()).isEqualTo(1);
    assertThat(said.get("standardError").doubleValue()).isPositive();
  }

  @ParameterizedTest
  @CsvSource({
    "draws=99, draws, 100 to 20000",
    "draws=20001, draws, 100 to 20000",
    "draws=many, draws, number",
    "seed=-1, seed, 0 to 9007199254740991",
    "seed=9007199254740992, seed, 0 to 9007199254740991"
  })
  void drawsThatCannotBeMeantAreRefusedWithTheirRange(String query, String name, String range) {
    HttpResponse<String> answer =
        service.get("/v1/assessments/" + assess("01") + "/chance?" + query);
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
    assertThat(answer.body()).contains("/problems/bad-parameter").contains(name).contains(range);
  }

  @Test
  void aHoldBeyondTheFormulasHasNoChance() {
    ObjectNode barely = RunningService.seed("12");
    ((ObjectNode) barely.get("hold")).put("gripDepth", 0.7);
    HttpResponse<String> judged = service.assess(barely);
    assertThat(judged.statusCode()).as(judged.body()).isEqualTo(201);
    String id = RunningService.json(judged).get("id").stringValue();
    HttpResponse<String> answer = service.get("/v1/assessments/" + id + "/chance");
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(409);
    assertThat(answer.body()).contains("/problems/conflict").contains("grip depth");
  }

  private String assess(String start) {
    Path file =
        RunningService.seedFiles().stream()
            .filter(path -> path.getFileName().toString().startsWith(start))
            .findFirst()
            .orElseThrow();
    return RunningService.json(service.assess(RunningService.text(file))).get("id").stringValue();
  }
}
