package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URLEncoder;
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
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;

/** A service that wants keys, from the first key of the operator to a call too many. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@IntegrationTest
class KeysWantedTest {

  private static final String JSON = "application/json";
  private static final Pattern KEY = Pattern.compile("standproud_[0-9a-f]{16}_[A-Za-z0-9_-]{43}");
  private static final int CALLS_A_MINUTE = 100;

  private final ByteArrayOutputStream console = new ByteArrayOutputStream();
  private final PrintStream before = System.out;
  private final List<String> secrets = new ArrayList<>();
  private RunningService service;
  private String operator;
  private String caller;
  private String auditor;

  @BeforeAll
  void start(@TempDir Path directory) {
    System.setOut(new PrintStream(console, true, StandardCharsets.UTF_8));
    service =
        RunningService.start(
            directory,
            Path.of("rules"),
            "--standproud.access=keys",
            "--standproud.limits.calls-per-minute=" + CALLS_A_MINUTE,
            "--logging.level.org.springframework.security=DEBUG",
            "--logging.level.org.springframework.web=TRACE",
            "--logging.level.org.springframework.jdbc=TRACE");
    Matcher first = KEY.matcher(console.toString(StandardCharsets.UTF_8));
    assertThat(first.find()).isTrue();
    operator = first.group();
    assertThat(first.find()).as("shown once").isFalse();
    caller = made("press shop ERP", "caller");
    auditor = made("A. Reed", "auditor");
  }

  @AfterAll
  void stop() {
    service.close();
    System.setOut(before);
    String log = console.toString(StandardCharsets.UTF_8).replaceFirst(KEY.pattern(), "");
    secrets.add(operator);
    assertThat(log.lines().filter(line -> secrets.stream().anyMatch(k -> line.contains(secret(k)))))
        .isEmpty();
    assertThat(log).contains("DEBUG");
  }

  private String made(String name, String role) {
    return issued(
        send(
            operator,
            "POST",
            "/v1/access/keys",
            "{\"caller\":\"%s\",\"roles\":[\"%s\"],\"expires\":\"%s\"}"
                .formatted(name, role, Instant.now().plus(Duration.ofDays(30)))));
  }

  private String issued(HttpResponse<String> response) {
    assertThat(response.statusCode()).as(response.body()).isEqualTo(201);
    String text = RunningService.json(response).get("text").stringValue();
    secrets.add(text);
    return text;
  }

  private HttpResponse<String> send(String key, String method, String path, String body) {
    HttpRequest.Builder request =
        service
            .caller()
            .to(path)
            .method(
                method,
                body.isEmpty()
                    ? HttpRequest.BodyPublishers.noBody()
                    : HttpRequest.BodyPublishers.ofString(body));
    if (!key.isEmpty()) {
      request.header("Authorization", "Bearer " + key);
    }
    return service.caller().send(body.isEmpty() ? request : request.header("Content-Type", JSON));
  }

  private static String secret(String key) {
    return key.substring("standproud_0123456789abcdef_".length());
  }

  private static String id(String key) {
    return key.substring("standproud_".length(), "standproud_".length() + 16);
  }

  private static void isProblem(HttpResponse<String> response, int status, String kind) {
    assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
    assertThat(response.headers().firstValue("Content-Type")).hasValue("application/problem+json");
    assertThat(response.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
    assertThat(RunningService.json(response).get("type").stringValue())
        .isEqualTo("/problems/" + kind);
  }

  @Test
  void whoShowsAKeyIsNamedInTheRecord() {
    HttpResponse<String> answer =
        send(caller, "POST", "/v1/assessments", RunningService.seed("01").toString());
    assertThat(answer.statusCode()).isEqualTo(201);
    JsonNode found =
        RunningService.json(send(caller, "GET", "/v1/assessments?caller=press%20shop%20ERP", ""));
    assertThat(found.at("/assessments/0/id")).isEqualTo(RunningService.json(answer).get("id"));
  }

  @Test
  void anAcceptanceNamesThePersonAndTheCallerThatSentIt() {
    JsonNode answer =
        RunningService.json(
            send(caller, "POST", "/v1/assessments", RunningService.seed("03").toString()));
    String card = answer.at("/findings/0/card").stringValue();
    String path = answer.at("/links/acceptances").stringValue();
    String asked =
        """
        {"card": "%s", "reason": "Held by hand clamps.", "expires": "%s", "forJobOrder": false,
         "by": {"name": "F. Orman", "role": "foreman"%s}}
        """;
    Instant expires = Instant.now().plus(Duration.ofDays(1));
    HttpResponse<String> accepted = send(caller, "POST", path, asked.formatted(card, expires, ""));
    assertThat(accepted.statusCode()).as(accepted.body()).isEqualTo(201);
    assertThat(RunningService.json(accepted).at("/by/caller").stringValue())
        .isEqualTo("press shop ERP");
    isProblem(
        send(caller, "POST", path, asked.formatted(card, expires, ", \"caller\": \"other\"")),
        400,
        "bad-parameter");
  }

  @Test
  void withoutAKeyOnlyTheHealthIsShown() {
    HttpResponse<String> refused = send("", "GET", "/v1/rules", "");
    isProblem(refused, 401, "key-wanted");
    assertThat(refused.headers().firstValue("WWW-Authenticate")).hasValue("Bearer");
    assertThat(refused.headers().firstValue("Set-Cookie")).isEmpty();
    isProblem(send("", "POST", "/v1/assessments", "{}"), 401, "key-wanted");
    isProblem(send("", "GET", "/v1/nothing-here", ""), 401, "key-wanted");
    isProblem(send("", "GET", "/actuator/prometheus", ""), 401, "key-wanted");
    assertThat(send("", "GET", "/actuator/health/readiness", "").statusCode()).isEqualTo(200);
    assertThat(send("", "GET", "/actuator/health", "").body()).doesNotContain("revision");
    assertThat(send("", "GET", "/problems/key-wanted", "").statusCode()).isEqualTo(200);
  }

  @ParameterizedTest
  @CsvSource({
    "caller, POST, /v1/access/keys",
    "caller, GET, /v1/access/keys",
    "caller, GET, /v1/audit/records",
    "caller, GET, /v1/audit/access",
    "caller, POST, /v1/rules/reload",
    "caller, DELETE, /v1/catalogue/cutters/none",
    "auditor, POST, /v1/assessments",
    "auditor, POST, /v1/audit/withholdings",
    "auditor, GET, /v1/access/keys",
    "operator, POST, /v1/assessments",
    "operator, GET, /v1/audit/records"
  })
  void aRoleThatIsNotInTheRowMayNot(String role, String method, String path) {
    String key = role.equals("caller") ? caller : role.equals("auditor") ? auditor : operator;
    HttpResponse<String> refused = send(key, method, path, method.equals("POST") ? "{}" : "");
    isProblem(refused, 403, "not-allowed");
    assertThat(RunningService.json(refused).get("detail").stringValue())
        .startsWith("It takes the role ");
  }

  @Test
  void theAuditorFindsDeniedCallsByCallerAndAddress() {
    String mill = made("mill 4", "caller");
    send(mill, "GET", "/v1/audit/records?jobOrder=SECRET-JOB", "");
    send(mill, "GET", "/v1/audit/records?jobOrder=SECRET-JOB", "");
    HttpResponse<String> journal =
        send(auditor, "GET", "/v1/audit/access?kind=denied&caller=mill%204", "");
    assertThat(journal.body()).doesNotContain("SECRET-JOB");
    JsonNode entries = RunningService.json(journal).get("entries");
    int times = 0;
    for (JsonNode entry : entries) {
      assertThat(entry.at("/about/place").stringValue()).isEqualTo("/v1/audit/**");
      assertThat(entry.at("/about/keyId").stringValue()).isEqualTo(id(mill));
      assertThat(entry.at("/about/status").intValue()).isEqualTo(403);
      assertThat(entry.at("/about/address").stringValue()).isEqualTo("127.0.0.1");
      times += entry.get("times").intValue();
    }
    assertThat(times).isEqualTo(2);
    JsonNode made =
        RunningService.json(send(auditor, "GET", "/v1/audit/access?kind=key%20made", ""));
    assertThat(made.toString()).contains("key of mill 4").contains(id(mill));
  }

  @Test
  void twoKeysServeWhileOneReplacesTheOtherAndNeverThree() {
    String old = made("lathe 2", "caller");
    String later = Instant.now().plus(Duration.ofDays(90)).toString();
    String body = "{\"expires\":\"%s\",\"overlap\":\"%s\"}";
    String next =
        issued(
            send(
                operator,
                "POST",
                "/v1/access/keys/" + id(old) + "/rotation",
                body.formatted(later, "P2D")));
    assertThat(send(old, "GET", "/v1/rules", "").statusCode()).isEqualTo(200);
    assertThat(send(next, "GET", "/v1/rules", "").statusCode()).isEqualTo(200);
    isProblem(
        send(
            operator,
            "POST",
            "/v1/access/keys/" + id(old) + "/rotation",
            body.formatted(later, "P2D")),
        409,
        "conflict");
    String last =
        issued(
            send(
                operator,
                "POST",
                "/v1/access/keys/" + id(next) + "/rotation",
                body.formatted(later, "PT0S")));
    isProblem(send(next, "GET", "/v1/rules", ""), 401, "key-wanted");
    assertThat(send(last, "GET", "/v1/rules", "").statusCode()).isEqualTo(200);
  }

  @Test
  void aKeyTakenBackOpensNothingFromTheNextCallOn() {
    String key = made("borer 9", "caller");
    assertThat(send(key, "GET", "/v1/rules", "").statusCode()).isEqualTo(200);
    assertThat(send(operator, "DELETE", "/v1/access/keys/" + id(key), "").statusCode())
        .isEqualTo(204);
    HttpResponse<String> refused = send(key, "GET", "/v1/rules", "");
    isProblem(refused, 401, "key-wanted");
    assertThat(refused.body()).contains("revoked");
    isProblem(send(operator, "DELETE", "/v1/access/keys/0000000000000000", ""), 404, "not-found");
  }

  @Test
  void theListOfKeysHoldsNoSecret() {
    String list = send(operator, "GET", "/v1/access/keys", "").body();
    assertThat(list).contains(id(caller)).doesNotContain(secret(caller));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"caller\":\"x\",\"roles\":[],\"expires\":\"2026-12-01T00:00:00Z\"}",
        "{\"caller\":\"x\",\"roles\":[\"king\"],\"expires\":\"2026-12-01T00:00:00Z\"}",
        "{\"caller\":\"x\",\"roles\":[\"caller\"],\"expires\":\"2001-12-01T00:00:00Z\"}",
        "{\"caller\":\"x\",\"roles\":[\"caller\"],\"expires\":\"2999-12-01T00:00:00Z\"}",
        "{\"caller\":\"anonymous\",\"roles\":[\"caller\"],\"expires\":\"2026-12-01T00:00:00Z\"}",
        "{\"caller\":\"token:x\",\"roles\":[\"caller\"],\"expires\":\"2026-12-01T00:00:00Z\"}",
        "{\"caller\":\"=1+1\",\"roles\":[\"caller\"],\"expires\":\"2026-12-01T00:00:00Z\"}",
        "{\"caller\":\"a\\nb\",\"roles\":[\"caller\"],\"expires\":\"2026-12-01T00:00:00Z\"}",
        "{\"caller\":\"x\",\"roles\":[\"caller\"]}",
        "{\"caller\":\"x\",\"roles\":[\"caller\"],\"expires\":\"soon\"}",
        "{\"caller\":\"x\",\"roles\":[\"caller\"],\"expires\":\"2026-12-01T00:00:00Z\",\"id\":1}"
      })
  void aKeyThatCannotBeIsRefused(String body) {
    isProblem(send(operator, "POST", "/v1/access/keys", body), 400, "bad-parameter");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Bearer",
        "Bearer ",
        "Bearer standproud_",
        "Bearer standproud_0123456789abcdef_short",
        "Bearer standproud_0123456789abcdef_AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA",
        "Bearer standproud_' or 1=1 --",
        "Bearer a.b.c",
        "Bearer eyJhbGciOiJub25lIn0.eyJzdWIiOiJ4Iiwicm9sZXMiOlsib3BlcmF0b3IiXX0.",
        "Basic YWRtaW46YWRtaW4=",
        "bearer \u00e9\u00e9"
      })
  void whatIsNoKeyOpensNothing(String header) {
    HttpResponse<String> refused =
        service
            .caller()
            .send(service.caller().to("/v1/rules").header("Authorization", header).GET());
    assertThat(refused.statusCode()).as(refused.body()).isIn(400, 401);
    assertThat(refused.headers().firstValue("Content-Type")).hasValue("application/problem+json");
  }

  @Test
  void aKeyWithOneCharacterChangedOrInTheAddressOpensNothing() {
    char last = caller.charAt(caller.length() - 2);
    String changed =
        caller.substring(0, caller.length() - 2)
            + (last == 'A' ? 'B' : 'A')
            + caller.charAt(caller.length() - 1);
    isProblem(send(changed, "GET", "/v1/rules", ""), 401, "key-wanted");
    String key = made("gossip", "caller");
    isProblem(send("", "GET", "/v1/rules?access_token=" + key, ""), 401, "key-wanted");
    secrets.remove(key); // A key in an address ends up in every log.
    assertThat(
            service
                .caller()
                .send(
                    service
                        .caller()
                        .to("/v1/rules")
                        .header("Authorization", "Bearer " + "A".repeat(7000))
                        .GET())
                .statusCode())
        .isIn(400, 401);
  }

  @Test
  void aCallerOverTheLimitGetsRetryAfterAndOthersAreNotHeldUp() {
    String eager = made("eager", "caller");
    HttpResponse<String> last = null;
    for (int i = 0; i < 50 * CALLS_A_MINUTE; i++) {
      last = send(eager, "GET", "/v1/vocabulary", "");
      if (last.statusCode() != 200) {
        break;
      }
    }
    isProblem(last, 429, "too-many-calls");
    assertThat(last.headers().firstValue("Retry-After"))
        .hasValueSatisfying(seconds -> assertThat(Integer.parseInt(seconds)).isBetween(1, 60));
    assertThat(send(caller, "GET", "/v1/vocabulary", "").statusCode()).isEqualTo(200);
    assertThat(send(auditor, "GET", "/v1/audit/access?status=429", "").body()).contains("eager");
  }

  @Test
  void aPersonSignsInWithAKeySendsAFormAndSignsOut() {
    Browser browser = new Browser(service.caller());
    HttpResponse<String> sentAway = browser.get("/");
    assertThat(sentAway.statusCode()).isEqualTo(302);
    assertThat(sentAway.headers().firstValue("Location").orElseThrow()).endsWith("/sign-in");
    assertThat(browser.get("/sign-in").headers().firstValue("Content-Security-Policy")).isPresent();
    assertThat(browser.post("/sign-in", "key=" + "nonsense").headers().firstValue("Location"))
        .hasValueSatisfying(place -> assertThat(place).endsWith("/sign-in?refused"));

    HttpResponse<String> in = browser.post("/sign-in", "key=" + caller);
    assertThat(in.statusCode()).isEqualTo(302);
    String cookie = String.join("\n", in.headers().allValues("Set-Cookie"));
    assertThat(cookie).contains("JSESSIONID").contains("HttpOnly").contains("SameSite=Strict");
    String page = browser.get("/?from=01-top-edge-wire-and-stop").body();
    assertThat(page).contains("press shop ERP").contains("name=\"_csrf\"");

    isForbiddenPage(browser.postWithoutToken("/", "%2Funits=metric"));
    assertThat(browser.post("/", "%2Funits=metric").statusCode()).isEqualTo(422);
    isForbiddenPage(browser.get("/v1/access/keys"));
    assertThat(browser.get("/v1/rules").statusCode()).isEqualTo(200);
    assertThat(browser.postWithoutToken("/v1/assessments", "").statusCode()).isEqualTo(403);

    assertThat(browser.post("/sign-out", "").statusCode()).isEqualTo(302);
    assertThat(browser.get("/rules").statusCode()).isEqualTo(302);
    assertThat(send(auditor, "GET", "/v1/audit/access?kind=signed%20in", "").body())
        .contains("press shop ERP");
  }

  @Test
  void aSessionEndsWithItsKey() {
    String key = made("grinder 1", "caller");
    Browser browser = new Browser(service.caller());
    browser.get("/sign-in");
    browser.post("/sign-in", "key=" + URLEncoder.encode(key, StandardCharsets.UTF_8));
    assertThat(browser.get("/rules").statusCode()).isEqualTo(200);
    send(operator, "DELETE", "/v1/access/keys/" + id(key), "");
    assertThat(browser.get("/rules").statusCode()).isEqualTo(302);
  }

  private static void isForbiddenPage(HttpResponse<String> response) {
    assertThat(response.statusCode()).isEqualTo(403);
    assertThat(response.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/html");
    assertThat(response.body()).contains("You may not do this");
  }
}
