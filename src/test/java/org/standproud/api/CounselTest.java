package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** What a shop system may ask of an assessment beyond its verdict. */
class CounselTest {

  private final RunningService service = RunningService.shared();

  @ParameterizedTest
  @ValueSource(strings = {"remedies", "other-holds", "questions", "envelope", "plan?remove=2"})
  void counselNamesTheRevisionThatJudgedItAndCarriesTheCautions(String what) {
    String id = assess("08");
    HttpResponse<String> answer = service.get("/v1/assessments/" + id + "/" + what);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    JsonNode said = RunningService.json(answer);
    assertThat(said.get("assessment").stringValue()).isEqualTo(id);
    assertThat(said.get("ruleBase").stringValue()).isNotBlank();
    assertThat(said.get("cautions").size()).isPositive();
    assertThat(said.get("counsel").size()).isPositive();
  }

  @Test
  void aWireLaidTooDeepIsPutRightAndTheRemedyWasJudged() {
    JsonNode said =
        RunningService.json(service.get("/v1/assessments/" + assess("08") + "/remedies"));
    JsonNode ways = said.get("counsel").get("ways");
    assertThat(ways.size()).isPositive();
    assertThat(ways.get(0).toString()).doesNotContain("do not run\",\"verdict");
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
        service.get("/v1/assessments/" + shallow + "/changes?with=" + deep);
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

  private String assess(String start) {
    Path file =
        RunningService.seedFiles().stream()
            .filter(path -> path.getFileName().toString().startsWith(start))
            .findFirst()
            .orElseThrow();
    return RunningService.json(service.assess(RunningService.text(file))).get("id").stringValue();
  }
}
