package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Every refusal is an RFC 9457 problem that says what to do about it. */
@IntegrationTest
class RefusalsTest {

  private static final String JSON = "application/json";

  private final RunningService service = RunningService.shared();
  private final RunningService.Caller caller = service.caller();

  @Test
  void nineFaultsInASetUpAreNineErrorsEachWithItsPlace() {
    ObjectNode setup = RunningService.seed("01");
    setup.put("colour", "red");
    ((ObjectNode) setup.get("stock"))
        .put("length", "long")
        .put("thickness", -1)
        .put("material", "cheese")
        .put("deburred", "maybe");
    ((ObjectNode) setup.get("hold")).put("seat", "air").remove("gripDepth");
    setup.put("machine", "large knee mil");
    ((ObjectNode) setup.get("cut")).put("operation", "top");

    JsonNode problem = problem(service.assess(setup), 422, "setup-refused");

    assertThat(problem.get("errors"))
        .extracting(error -> error.get("pointer").stringValue())
        .containsExactlyInAnyOrder(
            "/colour",
            "/stock/length",
            "/stock/thickness",
            "/stock/material",
            "/stock/deburred",
            "/hold/seat",
            "/hold/gripDepth",
            "/machine",
            "/cut/operation");
    JsonNode machine = error(problem, "/machine");
    assertThat(machine.get("hint").stringValue()).contains("large knee mill");
    assertThat(error(problem, "/hold/gripDepth").get("allowed").stringValue()).contains("mm");
  }

  @Test
  void anUnknownFieldIsReportedWithTheOneThatWasMeant() {
    ObjectNode setup = RunningService.seed("01");
    ((ObjectNode) setup.get("hold")).put("gripdeph", 40);
    JsonNode problem = problem(service.assess(setup), 422, "setup-refused");
    assertThat(error(problem, "/hold/gripdeph").get("hint").stringValue()).contains("gripDepth");
  }

  @Test
  void textThatIsNotJsonIsReportedByLineAndColumn() {
    JsonNode problem = problem(service.assess("{\"units\":\n  metric}"), 400, "malformed-request");
    assertThat(problem.get("line").intValue()).isEqualTo(2);
    assertThat(problem.get("column").intValue()).isPositive();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "{\"units\":1,\"units\":2}", "{} {}", "NaN"})
  void whatIsNotOneJsonTextIsRefused(String body) {
    HttpResponse<String> refused = service.assess(body);
    assertThat(refused.statusCode()).as(refused.body()).isIn(400, 422);
    assertThat(refused.body()).doesNotContain("Exception").doesNotContain("org.standproud");
  }

  @Test
  void nestingWithoutEndIsRefused() {
    problem(service.assess("[".repeat(10_000)), 400, "malformed-request");
  }

  @Test
  void bytesThatAreNoUtf8AreRefused() {
    HttpRequest.Builder request =
        caller
            .to("/v1/assessments")
            .header("Content-Type", JSON)
            .POST(HttpRequest.BodyPublishers.ofByteArray(new byte[] {'"', (byte) 0xC3, '"'}));
    problem(caller.send(request), 400, "malformed-request");
  }

  @Test
  void aBodyOverTheLimitIsRefusedWithOrWithoutContentLength() {
    String body = " ".repeat(70_000);
    problem(service.assess(body), 413, "too-large");
    HttpRequest.Builder chunked =
        caller
            .to("/v1/assessments")
            .header("Content-Type", JSON)
            .POST(
                HttpRequest.BodyPublishers.ofInputStream(
                    () -> new ByteArrayInputStream(body.getBytes(StandardCharsets.UTF_8))));
    problem(caller.send(chunked), 413, "too-large");
  }

  @Test
  void anotherMediaTypeAnotherMethodAndAnUnknownAddressAreProblems() {
    HttpResponse<String> yaml = caller.post("/v1/assessments", "units: metric", "application/yaml");
    problem(yaml, 415, "unsupported-media-type");
    HttpResponse<String> put =
        caller.send(caller.to("/v1/assessments").PUT(HttpRequest.BodyPublishers.ofString("{}")));
    problem(put, 405, "method-not-allowed");
    assertThat(put.headers().firstValue("Allow")).hasValueSatisfying(a -> a.contains("POST"));
    problem(service.get("/v1/assesments"), 404, "not-found");
    HttpResponse<String> html =
        caller.send(caller.to("/v1/rules").header("Accept", "text/html").GET());
    problem(html, 406, "not-acceptable");
  }

  @ParameterizedTest
  @CsvSource({
    "/v1/assessments/0197f3c2-7b1e-7c44-9d0a-3f6b2a1c5e77, 404, not-found",
    "/v1/assessments/0197f3c2-7b1e-7c44-9d0a-3f6b2a1c5e77/trace, 404, not-found",
    "/v1/assessments/17, 400, bad-parameter",
    "/v1/assessments?joborder=J, 400, bad-parameter",
    "/v1/assessments?jobOrder=J&jobOrder=K, 400, bad-parameter",
    "/v1/assessments?limit=0, 400, bad-parameter",
    "/v1/assessments?limit=many, 400, bad-parameter",
    "/v1/assessments?cursor=again, 400, bad-parameter",
    "/v1/assessments?from=yesterday, 400, bad-parameter",
    "/v1/rules/NONE-999, 404, not-found",
    "/v1/vocabulary?units=furlong, 400, bad-parameter",
    "/v1/catalogue/tables, 400, bad-parameter",
    "/v1/catalogue/vises/none, 404, not-found"
  })
  void whatIsAskedForAmissIsAProblem(String path, int status, String kind) {
    problem(service.get(path), status, kind);
  }

  /** The server itself refuses this address before the application sees it. */
  @Test
  void anAddressThatIsNoneIsAProblemToo() throws IOException {
    try (Socket socket = new Socket("127.0.0.1", caller.port())) {
      String request = "GET /v1/%ZZ HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
      assertThat(answer).startsWith("HTTP/1.1 400").contains("application/problem+json");
      String body = answer.substring(answer.indexOf("\r\n\r\n"));
      assertThat(JsonMapper.shared().readTree(body).get("type").stringValue())
          .isEqualTo("/problems/refused");
    }
  }

  @Test
  void parametersThatCannotBeTakenApartAreRefused() {
    problem(service.get("/v1/vocabulary?units=inch&=x"), 400, "refused");
    String back = "/v1/rule-base/revisions/0/rollback?%00=x";
    problem(caller.post(back, "{\"author\":\"a\"}", "application/json"), 400, "refused");
  }

  @Test
  void aBodyThatIsNullWhereAnObjectIsWantedIsRefused() {
    problem(caller.post("/v1/subscriptions", "null", "application/json"), 400, "bad-parameter");
  }

  @Test
  void theTypeOfAProblemLeadsToItsDescription() {
    JsonNode problem = problem(service.get("/v1/nothing"), 404, "not-found");
    JsonNode described = RunningService.json(service.get(problem.get("type").stringValue()));
    assertThat(described.get("title")).isEqualTo(problem.get("title"));
    assertThat(service.get("/problems").body()).contains("setup-refused", "cards-refused");
    problem(service.get("/problems/none"), 404, "not-found");
  }

  private static JsonNode problem(HttpResponse<String> response, int status, String kind) {
    assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
    assertThat(response.headers().firstValue("Content-Type")).hasValue("application/problem+json");
    JsonNode problem = RunningService.json(response);
    assertThat(problem.get("type").stringValue()).isEqualTo("/problems/" + kind);
    assertThat(problem.get("status").intValue()).isEqualTo(status);
    assertThat(problem.get("detail").stringValue()).isNotBlank();
    return problem;
  }

  private static JsonNode error(JsonNode problem, String pointer) {
    return StreamSupport.stream(problem.get("errors").spliterator(), false)
        .filter(error -> error.get("pointer").stringValue().equals(pointer))
        .findFirst()
        .orElseThrow();
  }
}
