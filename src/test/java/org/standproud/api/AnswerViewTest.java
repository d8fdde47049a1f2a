package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;

/** An answer in less than 2 kB says what the whole one says. */
@IntegrationTest
class AnswerViewTest {

  private static final int MOST_BYTES = 2048;

  static List<Path> seeds() {
    return RunningService.seedFiles();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aSummaryIsShortAndAgreesWithTheWholeAnswer(Path seed) {
    RunningService service = RunningService.shared();
    HttpResponse<String> made =
        service
            .caller()
            .post("/v1/assessments?view=summary", RunningService.text(seed), "application/json");
    assertThat(made.statusCode()).isEqualTo(201);
    assertThat(made.body().getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(MOST_BYTES);
    JsonNode summary = RunningService.json(made);
    JsonNode whole = RunningService.json(service.get(summary.at("/links/self").asString()));
    for (String same : List.of("id", "verdict", "summary", "score")) {
      assertThat(summary.get(same)).as(same).isEqualTo(whole.get(same));
    }
    assertThat(summary.path("holds").asDouble(-1))
        .isEqualTo(whole.at("/chance/holds").asDouble(-1));
    assertThat(summary.at("/findings/0/message")).isEqualTo(whole.at("/findings/0/message"));
    assertThat(summary.get("findings").size() + summary.get("furtherFindings").asInt())
        .isEqualTo(whole.get("findings").size());
    assertThat(summary.get("caution")).isEqualTo(whole.at("/cautions/0"));
  }

  @Test
  void eachViewHasATagOfItsOwn() {
    RunningService service = RunningService.shared();
    String self =
        RunningService.json(service.assess(RunningService.seed("01"))).at("/links/self").asString();
    HttpResponse<String> whole = service.get(self);
    HttpResponse<String> summary = service.get(self + "?view=summary");
    String sheet = RunningService.json(summary).at("/links/sheet").asString();
    assertThat(service.get(sheet).statusCode()).isEqualTo(200);
    assertThat(service.get(self + "?view=full").body()).isEqualTo(whole.body());
    assertThat(summary.headers().firstValue("ETag"))
        .isPresent()
        .isNotEqualTo(whole.headers().firstValue("ETag"));
  }

  @Test
  void anotherViewIsRefusedAndNothingIsRecorded() {
    RunningService service = RunningService.shared();
    String seed = RunningService.seed("02").put("note", "never recorded").toString();
    HttpResponse<String> refused =
        service.caller().post("/v1/assessments?view=short", seed, "application/json");
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).contains("view").contains("full or summary");
    assertThat(refused.headers().firstValue("Location")).isEmpty();
  }
}
