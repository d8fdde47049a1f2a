package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
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
      // The service is stopped only after it has answered this.
      assertThat(service.caller().assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
    }
    assertThat(log).doesNotContain("Fault");
  }

  /** More is exported than the buffers on the way hold, so the service meets the broken line. */
  @Test
  void anExportThatIsBrokenOffIsNoFault(@TempDir Path records, CapturedOutput log)
      throws IOException {
    try (RunningService service =
        RunningService.start(records, Path.of("rules"), "--standproud.audit.most-exports=1")) {
      String lines = (RunningService.seed("03") + "\n").repeat(200);
      assertThat(
              service
                  .caller()
                  .post("/v1/assessments/batch", lines, "application/x-ndjson")
                  .statusCode())
          .isEqualTo(200);
      int port = service.caller().port();
      for (String path : List.of("/v1/audit/chain", "/v1/audit/records")) {
        try (Socket caller = new Socket(InetAddress.getLoopbackAddress(), port)) {
          caller.setReceiveBufferSize(4096);
          caller.setSoLinger(true, 0);
          String head =
              "GET %s HTTP/1.1\r\nHost: localhost\r\nAccept: application/x-ndjson\r\n\r\n"
                  .formatted(path);
          caller.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
          assertThat(caller.getInputStream().read()).isEqualTo('H');
        }
        // There is room for one, so the export has ended once this is no longer refused.
        await()
            .atMost(Duration.ofSeconds(60))
            .until(() -> service.get("/v1/audit/records?jobOrder=none").statusCode() == 200);
      }
    }
    assertThat(log).doesNotContain("Fault").doesNotContain("ClientAbortException");
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
