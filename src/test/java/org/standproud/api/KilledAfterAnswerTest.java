package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;

/** Ends the service as kill -9 does, right after it answered. */
@IntegrationTest
class KilledAfterAnswerTest {

  private static final Path RULES = Path.of("rules");

  private @TempDir Path audit;

  @Test
  void anAnswerThatWasSentIsThereAfterTheServiceIsKilledAndStillUnderItsKey() throws Exception {
    HttpResponse<String> answer;
    try (ServiceProcess service = ServiceProcess.start(audit)) {
      answer = sent(service.caller());
    }
    assertThat(answer.statusCode()).isEqualTo(201);

    try (RunningService again = RunningService.start(audit, RULES)) {
      String self = answer.headers().firstValue("Location").orElseThrow();
      assertThat(again.get(self).body()).isEqualTo(answer.body());
      assertThat(sent(again.caller()).body()).isEqualTo(answer.body());
      assertThat(RunningService.json(again.get("/v1/assessments")).get("assessments").size())
          .isEqualTo(1);
    }
  }

  private static HttpResponse<String> sent(RunningService.Caller to) {
    return to.send(
        to.to("/v1/assessments")
            .header("Content-Type", "application/json")
            .header("Idempotency-Key", "traveler-0103-20")
            .POST(HttpRequest.BodyPublishers.ofString(RunningService.seed("03").toString())));
  }
}
