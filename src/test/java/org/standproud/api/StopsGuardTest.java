package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Where callers show keys, no one person takes a stop out of service. */
@IntegrationTest
@ExtendWith(OutputCaptureExtension.class)
class StopsGuardTest {

  private static final Pattern KEY = Pattern.compile("standproud_[0-9a-f]{16}_[A-Za-z0-9_-]{43}");
  private static final String PROPOSALS = "/v1/rule-base/proposals";

  private RunningService service;

  private HttpResponse<String> post(String key, String path, String body) {
    return service
        .caller()
        .send(
            service
                .caller()
                .to(path)
                .header("Authorization", "Bearer " + key)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body, StandardCharsets.UTF_8)));
  }

  private String key(String operator, String name) {
    String wanted =
        "{\"caller\":\"%s\",\"roles\":[\"rule editor\",\"rule publisher\",\"caller\"],\"expires\":\"%s\"}"
            .formatted(name, Instant.now().plus(Duration.ofDays(1)));
    HttpResponse<String> made = post(operator, "/v1/access/keys", wanted);
    assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
    return RunningService.json(made).get("text").stringValue();
  }

  @Test
  void takingStopsAwayTakesTwoPersonsAReasonForEachAndTheImpact(
      @TempDir Path records, CapturedOutput log) {
    service = RunningService.start(records, Path.of("rules"), "--standproud.access=keys");
    try {
      Matcher first = KEY.matcher(log.getAll());
      assertThat(first.find()).isTrue();
      String operator = first.group();
      String ann = key(operator, "Ann");
      String bob = key(operator, "Bob");
      assertThat(post(ann, "/v1/assessments", RunningService.seed("01").toString()).statusCode())
          .isEqualTo(201);

      ObjectNode edit = JsonMapper.shared().createObjectNode();
      ObjectNode files = edit.putObject("files");
      files.putNull("holding/HOLD-032.yaml");
      edit.put("note", "too strict");
      HttpResponse<String> proposed = post(ann, PROPOSALS, edit.toString());
      assertThat(proposed.statusCode()).as(proposed.body()).isEqualTo(201);
      JsonNode waits = RunningService.json(proposed);
      assertThat(waits.get("warnings").toString()).contains("the stop HOLD-032 is taken away");
      String publish = PROPOSALS + "/" + waits.at("/proposal/id").stringValue() + "/publication";

      HttpResponse<String> alone = post(ann, publish, "{\"note\":\"HOLD-032 is too strict\"}");
      assertThat(alone.statusCode()).isEqualTo(409);
      assertThat(alone.body()).contains("Someone other than Ann");
      HttpResponse<String> unnamed = post(bob, publish, "{}");
      assertThat(unnamed.statusCode()).isEqualTo(409);
      assertThat(unnamed.body()).contains("name each of them", "HOLD-032");
      String reason = "{\"note\":\"HOLD-032 is covered by HOLD-011\"}";
      HttpResponse<String> shown = post(bob, publish, reason);
      assertThat(shown.statusCode()).isEqualTo(409);
      assertThat(shown.body()).contains("past jobs get another verdict");
      HttpResponse<String> done = post(bob, publish, reason);
      assertThat(done.statusCode()).as(done.body()).isEqualTo(200);
    } finally {
      service.close();
    }
  }
}
