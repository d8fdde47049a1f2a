package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A shop system sends a night's set-ups in one request. */
@IntegrationTest
class BatchTest {

  private static final String NDJSON = "application/x-ndjson";

  private final RunningService service = RunningService.shared();

  @Test
  void everyLineIsAnsweredInItsPlaceAndABadOneSpoilsNoOther() {
    List<String> lines =
        List.of(
            job("B-1").toString(),
            "{\"units\":",
            "",
            "{}",
            "\"" + "x".repeat(70_000) + "\"",
            "{\"setup\":{},\"colour\":\"red\"}",
            job("B-2").toString());

    List<JsonNode> answers = batch(String.join("\n", lines));

    assertThat(answers).extracting(a -> a.get("line").intValue()).containsExactly(1, 2, 4, 5, 6, 7);
    assertThat(answers)
        .extracting(a -> a.get("status").intValue())
        .containsExactly(201, 400, 422, 413, 400, 201);
    assertThat(answers.get(1).at("/problem/type").stringValue())
        .isEqualTo("/problems/malformed-request");
    assertThat(answers.get(2).at("/problem/errors").size()).isPositive();
    JsonNode last = answers.get(5);
    assertThat(last.get("jobOrder").stringValue()).isEqualTo("B-2");
    JsonNode whole = RunningService.json(service.get(last.get("self").stringValue()));
    assertThat(whole.get("verdict")).isEqualTo(last.get("verdict"));
    assertThat(whole.at("/versions/ruleBase")).isEqualTo(last.get("ruleBase"));
    assertThat(whole.get("score").intValue()).isEqualTo(last.get("score").intValue());
  }

  @Test
  void aBatchSentAgainWithItsKeysLeavesNoSecondRecord() {
    List<String> lines =
        IntStream.range(0, 5).mapToObj(n -> keyed("batch-key-" + n, job("B-KEY"))).toList();
    List<JsonNode> first = batch(String.join("\n", lines));
    List<JsonNode> again = batch(String.join("\n", lines));

    assertThat(again).isEqualTo(first);
    JsonNode recorded = RunningService.json(service.get("/v1/assessments?jobOrder=B-KEY"));
    assertThat(recorded.get("assessments").size()).isEqualTo(5);
    JsonNode other = batch(keyed("batch-key-0", job("B-OTHER"))).get(0);
    assertThat(other.get("status").intValue()).isEqualTo(422);
    assertThat(other.at("/problem/type").stringValue()).isEqualTo("/problems/key-reused");
  }

  @Test
  @Timeout(300)
  void aLineIsAnsweredBeforeTheNextIsSent() throws Exception {
    try (StreamedBatch batch = new StreamedBatch(service.caller().port())) {
      for (int line = 1; line <= 3; line++) {
        batch.send(job("B-STEP").toString());
        JsonNode answer = JsonMapper.shared().readTree(batch.read());
        assertThat(answer.get("line").intValue()).isEqualTo(line);
        assertThat(answer.get("status").intValue()).isEqualTo(201);
      }
      batch.end();
      assertThat(batch.read()).isNull();
    }
  }

  @Test
  @Timeout(300)
  void aCallerWhoGoesAwayInTheMiddleLeavesTheServiceServing() throws Exception {
    try (StreamedBatch batch = new StreamedBatch(service.caller().port())) {
      Iterator<String> endless =
          java.util.stream.Stream.generate(() -> job("B-GONE").toString()).limit(40).iterator();
      while (endless.hasNext()) {
        batch.send(endless.next());
      }
      assertThat(batch.read()).contains("\"line\":1");
    }
    assertThat(batch(job("B-AFTER").toString()).get(0).get("status").intValue()).isEqualTo(201);
  }

  @Test
  void aBodyThatIsNoNdjsonIsRefusedAsAWhole() {
    HttpResponse<String> refused =
        service.caller().post("/v1/assessments/batch", "{}", "application/json");
    assertThat(refused.statusCode()).isEqualTo(415);
    assertThat(batch("")).isEmpty();
  }

  private List<JsonNode> batch(String body) {
    HttpResponse<String> answer = service.caller().post("/v1/assessments/batch", body, NDJSON);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    assertThat(answer.headers().firstValue("Content-Type").orElseThrow()).startsWith(NDJSON);
    return new ArrayList<>(
        Arrays.stream(answer.body().split("\n"))
            .filter(line -> !line.isEmpty())
            .map(line -> JsonMapper.shared().readTree(line))
            .toList());
  }

  private static String keyed(String key, ObjectNode setup) {
    return JsonNodeFactory.instance
        .objectNode()
        .put("idempotencyKey", key)
        .set("setup", setup)
        .toString();
  }

  private static ObjectNode job(String order) {
    ObjectNode setup = RunningService.seed("01");
    ((ObjectNode) setup.get("job")).put("jobOrder", order);
    return setup;
  }
}
