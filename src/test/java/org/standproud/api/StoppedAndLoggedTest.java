package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What an operator sees of a service that works and is logged to stop. */
@IntegrationTest
class StoppedAndLoggedTest {

  private static final String TRACE = "4bf92f3577b34da6a3ce929d0e0e4736";

  private @TempDir Path audit;

  @Test
  void aStoppingServiceAnswersWhatItHasAcceptedAndLosesNoneOfIt() throws Exception {
    ServiceProcess service = ServiceProcess.start(audit);
    ExecutorService callers = Executors.newFixedThreadPool(8);
    CountDownLatch answered = new CountDownLatch(20);
    List<Future<List<String>>> made = new ArrayList<>();
    try (service) {
      for (int i = 0; i < 8; i++) {
        made.add(callers.submit(() -> untilRefused(service.caller(), answered)));
      }
      answered.await();
      service.stop();
    }
    callers.shutdown();

    try (RunningService again = RunningService.start(audit, Path.of("rules"))) {
      for (Future<List<String>> of : made) {
        for (String self : of.get()) {
          assertThat(again.get(self).statusCode()).as(self).isEqualTo(200);
        }
      }
      assertThat(RunningService.json(again.get("/v1/audit/verification")).get("faults")).isEmpty();
    }
  }

  /** Elastic Common Schema, one of the layouts that Spring Boot writes. */
  @Test
  void logLinesAreJsonWithTheTraceOfTheCallOnDemand() throws Exception {
    List<String> lines;
    try (ServiceProcess service =
        ServiceProcess.start(
            audit,
            "--logging.structured.format.console=ecs",
            "--logging.level.org.springframework.web.servlet.DispatcherServlet=DEBUG")) {
      service
          .caller()
          .send(
              service
                  .caller()
                  .to("/v1/assessments")
                  .header("traceparent", "00-" + TRACE + "-00f067aa0ba902b7-01")
                  .GET());
      lines = service.stop();
    }

    List<JsonNode> logged = lines.stream().map(JsonMapper.shared()::readTree).toList();
    assertThat(logged).isNotEmpty().allSatisfy(line -> assertThat(line.has("@timestamp")).isTrue());
    assertThat(logged).anySatisfy(line -> assertThat(line.toString()).contains(TRACE));
  }

  /** Posts until the service accepts no more; returns the addresses of the answers. */
  private static List<String> untilRefused(RunningService.Caller to, CountDownLatch answered) {
    List<String> found = new ArrayList<>();
    String body = RunningService.seed("01").toString();
    for (int calls = 0; calls < 10_000; calls++) {
      HttpResponse<String> answer;
      try {
        answer =
            to.send(
                to.to("/v1/assessments")
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString(body)));
      } catch (RuntimeException closed) {
        return found;
      }
      if (answer.statusCode() == 503) {
        assertThat(answer.body()).contains("/problems/stopping");
        return found;
      }
      assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
      found.add(answer.headers().firstValue("Location").orElseThrow());
      answered.countDown();
    }
    throw new AssertionError("the service never stopped");
  }
}
