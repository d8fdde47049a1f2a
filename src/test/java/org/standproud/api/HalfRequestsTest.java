package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.standproud.IntegrationTest;

/** Callers who stop in the middle, on sockets of their own: no fault of the service. */
@ExtendWith(OutputCaptureExtension.class)
@IntegrationTest
class HalfRequestsTest {

  private static final String HEAD =
      """
      POST %s HTTP/1.1\r
      Host: 127.0.0.1:%d\r
      Content-Type: %s\r
      Content-Length: 100\r
      Connection: close\r
      \r
      {"half\
      """;

  @ParameterizedTest
  @ValueSource(strings = {"/v1/assessments", "/v1/subscriptions"})
  void aBodyThatStallsIsTooSlow(String path, @TempDir Path records, CapturedOutput log)
      throws IOException {
    try (RunningService service = started(records);
        Socket caller = half(service, path, "application/json")) {
      String answer = new String(caller.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 408").contains("/problems/too-slow");
    }
    assertThat(log).doesNotContain("Fault");
  }

  @Test
  void aBodyThatBreaksOffIsNoFault(@TempDir Path records, CapturedOutput log) throws IOException {
    try (RunningService service = started(records)) {
      for (int i = 0; i < 5; i++) {
        half(service, "/v1/assessments", "application/json").close();
        half(service, "/v1/assessments/batch", "application/x-ndjson").close();
      }
      // The service is told to stop only when it has answered this.
      assertThat(service.caller().assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
    }
    assertThat(log).doesNotContain("Fault");
  }

  private static RunningService started(Path records) {
    return RunningService.start(
        records, Path.of("rules"), "--server.tomcat.connection-timeout=300ms");
  }

  private static Socket half(RunningService service, String path, String type) throws IOException {
    int port = service.caller().to(path).build().uri().getPort();
    Socket caller = new Socket(InetAddress.getLoopbackAddress(), port);
    caller
        .getOutputStream()
        .write(HEAD.formatted(path, port, type).getBytes(StandardCharsets.UTF_8));
    return caller;
  }
}
