package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.Standproud;

/** Ends the service as kill -9 does, right after it answered. */
class KilledAfterAnswerTest {

  private static final Pattern STARTED = Pattern.compile("Tomcat started on port (\\d+)");
  private static final Path RULES = Path.of("rules");

  private @TempDir Path audit;

  @Test
  void anAnswerThatWasSentIsThereAfterTheServiceIsKilledAndStillUnderItsKey() throws Exception {
    Process service = start();
    HttpResponse<String> answer;
    try (BufferedReader said = service.inputReader()) {
      answer = sent(new RunningService.Caller(port(said)));
    } finally {
      service.destroyForcibly().waitFor();
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

  private Process start() throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Standproud.class.getName()));
    command.addAll(RunningService.arguments(audit, RULES));
    return new ProcessBuilder(command).redirectErrorStream(true).start();
  }

  private static int port(BufferedReader said) throws IOException {
    List<String> lines = new ArrayList<>();
    String line;
    while ((line = said.readLine()) != null) {
      lines.add(line);
      Matcher started = STARTED.matcher(line);
      if (started.find()) {
        return Integer.parseInt(started.group(1));
      }
    }
    throw new IllegalStateException("the service did not start: " + String.join("\n", lines));
  }
}
