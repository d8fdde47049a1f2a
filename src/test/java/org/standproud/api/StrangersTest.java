package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.standproud.IntegrationTest;

/** Callers without a key, where keys are wanted: they are refused and hold up no other caller. */
@IntegrationTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
@ExtendWith(OutputCaptureExtension.class)
class StrangersTest {

  /** More than the server has threads. */
  private static final int MANY = 250;

  private static final String FORM = "application/x-www-form-urlencoded";

  private static final Pattern KEY = Pattern.compile("standproud_[0-9a-f]{16}_[A-Za-z0-9_-]{43}");
  private static final Pattern LENGTH = Pattern.compile("Content-Length: ([0-9]+)");
  private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

  private RunningService service;
  private String operator;

  @BeforeAll
  void start(@TempDir Path records, CapturedOutput log) {
    service = RunningService.start(records, Path.of("rules"), "--standproud.access=keys");
    Matcher first = KEY.matcher(log.getAll());
    assertThat(first.find()).isTrue();
    operator = first.group();
  }

  @AfterAll
  void stop() {
    service.close();
  }

  private Socket half(String call, String type) throws IOException {
    Socket caller = new Socket(InetAddress.getLoopbackAddress(), service.caller().port());
    caller.setSoTimeout(15_000);
    String head =
        "%s HTTP/1.1\r\nHost: localhost\r\nContent-Type: %s\r\nContent-Length: 1000\r\n\r\nk"
            .formatted(call, type);
    caller.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
    return caller;
  }

  /** None of the bodies ever ends, so a server that waits for them has no thread left. */
  private void holdOpen(String call, String type, int status) throws IOException {
    List<Socket> slow = new ArrayList<>();
    try {
      for (int i = 0; i < MANY; i++) {
        slow.add(half(call, type));
      }
      HttpRequest.Builder alive =
          service.caller().to("/actuator/health/liveness").timeout(Duration.ofSeconds(10)).GET();
      assertThat(service.caller().send(alive).statusCode()).isEqualTo(200);
      for (Socket caller : slow.subList(MANY - 20, MANY)) {
        assertThat(status(caller)).isEqualTo(status);
      }
    } finally {
      for (Socket caller : slow) {
        caller.close();
      }
    }
  }

  private static int status(Socket caller) throws IOException {
    InputStream in = caller.getInputStream();
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    int next;
    while ((next = in.read()) >= 0 && next != '\n') {
      line.write(next);
    }
    return Integer.parseInt(line.toString(StandardCharsets.US_ASCII).split(" ")[1]);
  }

  @Test
  void formsThatNeverEndLeaveTheServiceAnswering() throws IOException {
    holdOpen("POST /sign-in", FORM, 429);
  }

  @Test
  void refusedBodiesThatNeverEndLeaveTheServiceAnswering() throws IOException {
    holdOpen("POST /v1/assessments", "application/json", 401);
  }

  @Test
  void bodiesThatAPageDoesNotReadLeaveTheServiceAnswering() throws IOException {
    holdOpen("GET /sign-in", "application/json", 200);
  }

  /** The body follows the refusal, and the next request follows the body (RFC 9112, 9.3). */
  @Test
  void aRefusalWhoseBodyArrivesLeavesTheConnectionOpen() throws IOException {
    String body = "x".repeat(20_000);
    String head =
        "POST /v1/assessments HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
            + "Content-Length: %d\r\n\r\n".formatted(body.length());
    try (Socket caller = new Socket(InetAddress.getLoopbackAddress(), service.caller().port())) {
      caller.setSoTimeout(15_000);
      for (int i = 0; i < 2; i++) {
        caller.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
        assertThat(answered(caller)).startsWith("HTTP/1.1 401");
        caller.getOutputStream().write(body.getBytes(StandardCharsets.US_ASCII));
      }
    }
  }

  /** Head and body of one answer with a Content-Length. */
  private static String answered(Socket caller) throws IOException {
    InputStream in = caller.getInputStream();
    StringBuilder head = new StringBuilder();
    int next;
    while (head.indexOf("\r\n\r\n") < 0 && (next = in.read()) >= 0) {
      head.append((char) next);
    }
    Matcher length = LENGTH.matcher(head);
    assertThat(length.find()).as(head.toString()).isTrue();
    in.readNBytes(Integer.parseInt(length.group(1)));
    return head.toString();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/sign-in?x=%ff",
        "/?x=%ff",
        "/rules?x=%",
        "/v1/rules?x=%zz",
        "/sign-in?x=%0d%0a%ff"
      })
  void aQueryThatIsNotUtf8IsRefusedAndNotLogged(String path, CapturedOutput log)
      throws IOException {
    int before = log.getAll().length();
    for (String accept : List.of("text/html", "application/json")) {
      try (Socket caller = new Socket(InetAddress.getLoopbackAddress(), service.caller().port())) {
        caller
            .getOutputStream()
            .write(
                ("GET "
                        + path
                        + " HTTP/1.1\r\nHost: localhost\r\nAccept: "
                        + accept
                        + "\r\nConnection: close\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
        String answer = new String(caller.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(answer).startsWith("HTTP/1.1 400").contains("nosniff");
        assertThat(answer)
            .contains(
                accept.equals("text/html") ? "The request is refused</h1>" : "/problems/refused");
      }
    }
    assertThat(log.getAll().length() - before).isZero();
  }

  @Test
  void aFormThatIsNotUtf8IsRefused() {
    assertThat(service.caller().post("/sign-in", "key=%ff", FORM).statusCode()).isEqualTo(400);
  }

  @Test
  void noHostHeaderChoosesWhereARedirectLeads() throws IOException {
    for (String request :
        List.of(
            "GET /records HTTP/1.1\r\nAccept: text/html\r\n",
            "POST /sign-in HTTP/1.1\r\nContent-Type: " + FORM + "\r\nContent-Length: 0\r\n")) {
      try (Socket caller = new Socket(InetAddress.getLoopbackAddress(), service.caller().port())) {
        caller
            .getOutputStream()
            .write(
                (request + "Host: elsewhere.example\r\nConnection: close\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
        String answer = new String(caller.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(answer).doesNotContain("elsewhere.example");
      }
    }
  }

  @Test
  void noHostHeaderChoosesWhereAnAssessmentLies() throws IOException {
    String wanted =
        "{\"caller\":\"Eve\",\"roles\":[\"caller\"],\"expires\":\"%s\"}"
            .formatted(Instant.now().plus(Duration.ofDays(1)));
    HttpRequest.Builder made =
        service
            .caller()
            .to("/v1/access/keys")
            .header("Authorization", "Bearer " + operator)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(wanted));
    String key = RunningService.json(service.caller().send(made)).get("text").stringValue();
    byte[] body = RunningService.seed("01").toString().getBytes(StandardCharsets.UTF_8);
    String head =
        "POST /v1/assessments HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n"
            + "Authorization: Bearer "
            + key
            + "\r\nContent-Type: application/json\r\nContent-Length: "
            + body.length
            + "\r\n\r\n";
    try (Socket caller = new Socket(InetAddress.getLoopbackAddress(), service.caller().port())) {
      caller.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
      caller.getOutputStream().write(body);
      String answer = new String(caller.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 201").contains("Location: /v1/assessments/");
      assertThat(answer).doesNotContain("elsewhere.example");
    }
  }

  @Test
  void aFormThatStrangersMaySendIsShort() {
    HttpResponse<String> answer =
        service.caller().post("/sign-in", "key=" + "a".repeat(20_000), FORM);
    assertThat(answer.statusCode()).isEqualTo(413);
  }

  /** Last, because it uses up what this address may try. */
  @Test
  @Order(Integer.MAX_VALUE)
  void whoTriesKeysIsSlowedAndAKeyThatOpensIsNot() {
    int last = 0;
    for (int i = 0; i < 100 && last != 429; i++) {
      last = withKey("standproud_0123456789abcdef_" + "a".repeat(43)).statusCode();
      assertThat(last).isIn(401, 429);
    }
    assertThat(last).isEqualTo(429);
    assertThat(withKey(operator).statusCode()).isEqualTo(200);
  }

  private HttpResponse<String> withKey(String key) {
    return service
        .caller()
        .send(service.caller().to("/v1/rules").header("Authorization", "Bearer " + key).GET());
  }

  /** A browser may be made to send a header; what it cannot be made to send is the token. */
  @Test
  void aSessionNeedsTheTokenWhateverHeaderComesWithIt() {
    HttpResponse<String> page = service.get("/sign-in");
    Matcher token = TOKEN.matcher(page.body());
    assertThat(token.find()).isTrue();
    HttpResponse<String> in =
        send(cookies(page), null, "/sign-in", "_csrf=" + token.group(1) + "&key=" + operator);
    assertThat(in.statusCode()).isEqualTo(302);
    assertThat(in.headers().firstValue("Location").orElseThrow()).startsWith("/");
    String session = cookies(in);
    String change = "/v1/access/keys";
    assertThat(send(session, null, change, "{}").statusCode()).isEqualTo(403);
    // A key is checked for itself, whatever session comes with it.
    assertThat(send(session, "Bearer x", change, "{}").statusCode()).isEqualTo(401);
    assertThat(send(session, "Basic eDp5", change, "{}").statusCode()).isEqualTo(403);
    assertThat(send(session, "Basic eDp5", "/draft", "a=b").statusCode()).isEqualTo(403);
  }

  private static String cookies(HttpResponse<String> answer) {
    return answer.headers().allValues("Set-Cookie").stream()
        .map(cookie -> cookie.replaceFirst(";.*", ""))
        .collect(Collectors.joining("; "));
  }

  private HttpResponse<String> send(
      String cookies, String authorization, String path, String body) {
    HttpRequest.Builder request =
        service
            .caller()
            .to(path)
            .header("Cookie", cookies)
            .header("Content-Type", body.startsWith("{") ? "application/json" : FORM)
            .POST(HttpRequest.BodyPublishers.ofString(body));
    return service
        .caller()
        .send(authorization == null ? request : request.header("Authorization", authorization));
  }
}
