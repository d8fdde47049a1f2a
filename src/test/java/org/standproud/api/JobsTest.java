package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A whole job over REST. */
@IntegrationTest
class JobsTest {

  private static final String JOBS = "/v1/jobs";

  private static HttpResponse<String> plan(JsonNode job) {
    return RunningService.shared().caller().post(JOBS, job.toString(), "application/json");
  }

  private static ObjectNode seed() {
    return (ObjectNode)
        JsonMapper.shared()
            .readTree(RunningService.text(Path.of("seeds/jobs/01-loom-side-from-blank.json")));
  }

  /** Edges only: the shortest of the demonstrations. */
  private static ObjectNode edges() {
    ObjectNode job = seed();
    ((ObjectNode) job.get("finished")).put("length", 122).put("thickness", 20);
    return job;
  }

  @Test
  void everyPassCanBePostedAndGetsTheSameVerdict() {
    HttpResponse<String> answer = plan(edges());
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    JsonNode plan = RunningService.json(answer).get("plan");
    assertThat(plan.get("setUps")).hasSize(2);
    int passes = 0;
    for (JsonNode setUp : plan.get("setUps")) {
      for (JsonNode pass : setUp.get("passes")) {
        HttpResponse<String> judged = RunningService.shared().assess(pass.get("setup"));
        assertThat(judged.statusCode()).as(judged.body()).isEqualTo(201);
        JsonNode assessment = RunningService.json(judged);
        assertThat(assessment.get("verdict")).isEqualTo(pass.get("verdict"));
        assertThat(assessment.get("score")).isEqualTo(pass.get("score"));
        assertThat(assessment.get("summary")).isEqualTo(pass.get("summary"));
        assertThat(assessment.at("/chance/holds").asDouble())
            .isEqualTo(pass.get("chance").asDouble());
        assertThat(assessment.at("/job/operation").asString())
            .isEqualTo(String.valueOf(10 * setUp.get("number").asInt()));
        passes++;
      }
    }
    assertThat(passes).isGreaterThan(2);
    assertThat(plan.get("cautions")).isNotEmpty();
    assertThat(plan.at("/riskiest/text").asString()).startsWith("Riskiest: pass ");
    assertThat(plan.at("/search/setUps").asInt()).isPositive();
  }

  @Test
  void aFinishedSizeAboveTheBlankIsAProblemWithPlaceRangeAndUnit() {
    ObjectNode job = seed();
    ((ObjectNode) job.get("finished")).put("thickness", 25);
    HttpResponse<String> refused = plan(job);
    assertThat(refused.statusCode()).isEqualTo(422);
    JsonNode problem = RunningService.json(refused);
    assertThat(problem.get("type").asString()).endsWith("/problems/job-refused");
    JsonNode error = problem.get("errors").get(0);
    assertThat(error.get("pointer").asString()).isEqualTo("/finished/thickness");
    assertThat(error.get("allowed").asString()).isEqualTo("at most 20");
    assertThat(error.get("unit").asString()).isEqualTo("mm");
  }

  @Test
  void aShelfWithoutACutterThatReachesSaysHowLargeItMustBe() {
    ObjectNode job = edges();
    ((ObjectNode) job.get("shelf")).putArray("cutters").add("10 mm end mill");
    HttpResponse<String> refused = plan(job);
    assertThat(refused.statusCode()).isEqualTo(422);
    JsonNode error = RunningService.json(refused).get("errors").get(0);
    assertThat(error.get("pointer").asString()).isEqualTo("/shelf/cutters");
    assertThat(error.get("allowed").asString()).isEqualTo("at least 21 mm in diameter");
  }

  @Test
  void whatIsNotJsonIsRefusedAsEverywhere() {
    HttpResponse<String> refused =
        RunningService.shared().caller().post(JOBS, "{", "application/json");
    assertThat(refused.statusCode()).isEqualTo(400);
  }
}
