package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.IntegrationTest;

/** A service without access control keeps to its own machine. */
@IntegrationTest
class OpenServiceTest {

  private final RunningService service = RunningService.shared();

  @ParameterizedTest
  @ValueSource(strings = {"--server.address=0.0.0.0", "--server.address=::"})
  void itDoesNotStartWhereOtherMachinesReachIt(String setting, @TempDir Path directory) {
    assertThatThrownBy(() -> RunningService.start(directory, Path.of("rules"), setting))
        .rootCause()
        .hasMessageContaining("only with access control");
  }

  @Test
  void itDoesNotStartWithTokensButWithoutAccessControl(@TempDir Path directory) {
    assertThatThrownBy(
            () ->
                RunningService.start(
                    directory,
                    Path.of("rules"),
                    "--spring.security.oauth2.resourceserver.jwt.jwk-set-uri=http://127.0.0.1:1/"))
        .rootCause()
        .hasMessageContaining("standproud.access=keys is not set");
  }

  /** A name from elsewhere that was made to point here, so that a page there counts as ours. */
  @ParameterizedTest
  @CsvSource({
    "localhost, 200",
    "127.0.0.1, 200",
    "[::1], 200",
    "elsewhere.example, 400",
    "127.0.0.1.elsewhere.example, 400",
    "localhost.elsewhere.example, 400"
  })
  void itAnswersToTheNamesOfItsOwnMachineOnly(String host, int status) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", service.caller().port())) {
      String request = "GET /v1/rules HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 " + status);
      assertThat(answer.contains("application/problem+json")).isEqualTo(status != 200);
    }
  }

  @Test
  void whatAPageFromElsewhereSendsIsRefusedThoughNoKeyIsWanted() {
    HttpRequest.Builder forged =
        service
            .caller()
            .to("/v1/rules/reload")
            .header("Sec-Fetch-Site", "cross-site")
            .POST(HttpRequest.BodyPublishers.noBody());
    assertThat(service.caller().send(forged).statusCode()).isEqualTo(403);
    HttpRequest.Builder unnamed =
        service
            .caller()
            .to("/v1/rules/reload")
            .header("Origin", "null")
            .POST(HttpRequest.BodyPublishers.noBody());
    assertThat(service.caller().send(unnamed).statusCode()).isEqualTo(403);
  }
}
