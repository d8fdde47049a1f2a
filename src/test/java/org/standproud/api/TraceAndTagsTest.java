package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;

/** W3C Trace Context, and conditional requests of RFC 9110. */
@IntegrationTest
class TraceAndTagsTest {

  /** The example of the W3C recommendation, section 3.2 [memory]. */
  private static final String TRACE = "4bf92f3577b34da6a3ce929d0e0e4736";

  private final RunningService service = RunningService.shared();
  private final RunningService.Caller caller = service.caller();

  @Test
  void theTraceOfTheShopSystemGoesOnInTheRecordAndInProblems() {
    HttpResponse<String> answer = traced(RunningService.seed("03").toString());
    String id = RunningService.json(answer).get("id").stringValue();
    HttpRequest.Builder all =
        caller
            .to("/v1/audit/records?jobOrder=TLW-0103")
            .header("Accept", "application/x-ndjson")
            .GET();
    String record =
        caller.send(all).body().lines().filter(l -> l.contains("\"id\":\"" + id)).findFirst().get();
    assertThat(record).contains("\"trace\":\"" + TRACE + "\"");

    JsonNode problem = RunningService.json(traced("{}"));
    assertThat(problem.get("trace").stringValue()).isEqualTo(TRACE);
  }

  @Test
  void aCallerWithoutATraceIsGivenOne() {
    String trace = RunningService.json(service.assess("{}")).get("trace").stringValue();
    assertThat(trace).matches("[0-9a-f]{32}").isNotEqualTo(TRACE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "/trace", "/evidence"})
  void anAnswerThatACallerKeepsIsNotSentTwice(String part) {
    String self = service.assess(RunningService.seed("03")).headers().firstValue("Location").get();
    assertNotSentTwice(self + part);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/v1/catalogue", "/v1/catalogue/vises", "/v1/catalogue/vises?units=inch"})
  void aCatalogueThatACallerKeepsIsNotSentTwice(String path) {
    assertNotSentTwice(path);
    assertThat(service.get("/v1/catalogue/vises").headers().firstValue("ETag"))
        .isNotEqualTo(service.get("/v1/catalogue/vises?units=inch").headers().firstValue("ETag"));
  }

  private void assertNotSentTwice(String path) {
    HttpResponse<String> first = service.get(path);
    String tag = first.headers().firstValue("ETag").orElseThrow();
    assertThat(first.headers().allValues("Cache-Control")).containsExactly("private, no-cache");
    HttpResponse<String> again = caller.send(caller.to(path).header("If-None-Match", tag).GET());
    assertThat(again.statusCode()).isEqualTo(304);
    assertThat(again.body()).isEmpty();
    HttpResponse<String> other =
        caller.send(caller.to(path).header("If-None-Match", "\"0\"").GET());
    assertThat(other.statusCode()).isEqualTo(200);
    assertThat(other.body()).isEqualTo(first.body());
  }

  private HttpResponse<String> traced(String body) {
    return caller.send(
        caller
            .to("/v1/assessments")
            .header("Content-Type", "application/json")
            .header("traceparent", "00-" + TRACE + "-00f067aa0ba902b7-01")
            .POST(HttpRequest.BodyPublishers.ofString(body)));
  }
}
