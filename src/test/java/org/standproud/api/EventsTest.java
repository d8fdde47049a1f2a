package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Base64;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.IntegrationTest;
import org.standproud.audit.records.PostgresServer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A shop system subscribes to events, and misses none. */
@Timeout(600)
@IntegrationTest
class EventsTest {

  private static final String[] QUICK = {
    "--standproud.events.inside-hosts=127.0.0.1",
    "--standproud.events.first-wait=20ms",
    "--standproud.events.poll=50ms",
    "--standproud.events.tries=3"
  };
  private static final Path RULES = Path.of("rules");
  private static final String JUDGED = "org.standproud.assessment.judged";

  private static @TempDir Path audit;
  private static RunningService service;

  @BeforeAll
  static void start() {
    service = RunningService.start(audit, RULES, QUICK);
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  @Test
  void anEventIsRetriedUntilDeliveredSignedEachTimeAndLinksToTheAnswer() throws Exception {
    try (Receiver shop = new Receiver(n -> n <= 2 ? 503 : 204)) {
      JsonNode subscription = subscribe(shop, JUDGED);
      String self =
          service.assess(RunningService.seed("03")).headers().firstValue("Location").get();

      Set<String> ids = new HashSet<>();
      for (int status : new int[] {503, 503, 204}) {
        Receiver.Received sent = shop.next();
        assertThat(sent.status()).isEqualTo(status);
        assertThat(sent.signature()).isEqualTo(signature(subscription, sent));
        assertThat(Instant.ofEpochSecond(Long.parseLong(sent.timestamp())))
            .isBetween(Instant.now().minus(Duration.ofMinutes(5)), Instant.now().plusSeconds(1));
        assertThat(sent.type()).startsWith("application/cloudevents+json");
        ids.add(sent.id());
        JsonNode event = JsonMapper.shared().readTree(sent.body());
        assertThat(event.get("specversion").stringValue()).isEqualTo("1.0");
        assertThat(event.get("type").stringValue()).isEqualTo(JUDGED);
        assertThat(event.get("id").stringValue()).isEqualTo(sent.id());
        assertThat(event.get("source").stringValue()).isEqualTo("urn:standproud");
        assertThat(event.get("datacontenttype").stringValue()).isEqualTo("application/json");
        assertThat(OffsetDateTime.parse(event.get("time").stringValue())).isNotNull();
        JsonNode data = event.get("data");
        assertThat(data.get("self").stringValue()).isEqualTo(self);
        assertThat(data.get("verdict").stringValue()).isEqualTo("do not run");
        assertThat(data.get("jobOrder").stringValue()).isEqualTo("TLW-0103");
      }
      assertThat(ids).hasSize(1);
      end(subscription);
    }
  }

  @Test
  void anAcceptedFindingIsSentAndOtherTypesAreNot() throws Exception {
    try (Receiver shop = new Receiver(n -> 200)) {
      JsonNode subscription = subscribe(shop, "org.standproud.finding.accepted");
      JsonNode answer = RunningService.json(service.assess(RunningService.seed("03")));
      String card = answer.at("/findings/0/card").stringValue();
      String accepted =
          "{\"card\":\"%s\",\"reason\":\"held by hand clamps\",\"by\":{\"name\":\"M. Weaver\","
              + "\"role\":\"foreman\"},\"expires\":\"%s\",\"forJobOrder\":false}";
      HttpResponse<String> given =
          service
              .caller()
              .post(
                  answer.at("/links/acceptances").stringValue(),
                  accepted.formatted(card, Instant.now().plus(Duration.ofDays(1))),
                  "application/json");
      assertThat(given.statusCode()).as(given.body()).isEqualTo(201);

      JsonNode event = JsonMapper.shared().readTree(shop.next().body());
      assertThat(event.get("type").stringValue()).isEqualTo("org.standproud.finding.accepted");
      assertThat(event.at("/data/card").stringValue()).isEqualTo(card);
      assertThat(event.at("/data/role").stringValue()).isEqualTo("foreman");
      assertThat(event.toString()).doesNotContain("Weaver");
      end(subscription);
    }
  }

  /** Enough events to hold every thread that sends for minutes, if one subscriber could. */
  @Test
  @Timeout(50)
  void aSubscriberThatDoesNotAnswerDelaysNoOther() throws Exception {
    CountDownLatch end = new CountDownLatch(1);
    try (Receiver silent =
            new Receiver(
                n -> {
                  try {
                    end.await();
                  } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                  }
                  return 200;
                });
        Receiver quick = new Receiver(n -> 200)) {
      JsonNode first = subscribe(silent, JUDGED);
      JsonNode second = subscribe(quick, JUDGED);
      for (int i = 0; i < 30; i++) {
        service.assess(RunningService.seed("03"));
      }
      for (int i = 0; i < 30; i++) {
        quick.next();
      }
      assertThat(end.getCount()).isEqualTo(1);
      end.countDown();
      end(second);
      end(first);
    }
  }

  @Test
  void anEventThatIsNeverTakenIsGivenUpSeenAndCanBeSentAgain() throws Exception {
    try (Receiver shop = new Receiver(n -> n <= 3 ? 500 : 200)) {
      JsonNode subscription = subscribe(shop, JUDGED);
      service.assess(RunningService.seed("03"));
      for (int n = 0; n < 3; n++) {
        shop.next();
      }
      String self = "/v1/subscriptions/" + subscription.get("id").stringValue();
      JsonNode dead = deliveryOnceIn(self, "dead");
      assertThat(dead.get("result").stringValue()).isEqualTo("500");
      assertThat(dead.get("tries").intValue()).isEqualTo(3);
      assertThat(RunningService.json(service.get(self)).get("dead").intValue()).isEqualTo(1);

      String again = self + "/deliveries/" + dead.get("id").stringValue() + "/retry";
      assertThat(service.caller().post(again, "", "application/json").statusCode()).isEqualTo(202);
      assertThat(shop.next().status()).isEqualTo(200);
      end(subscription);
    }
  }

  @Test
  void aRedirectIsNotFollowed() throws Exception {
    try (Receiver shop = new Receiver(n -> n == 1 ? 302 : 200)) {
      JsonNode subscription = subscribe(shop, JUDGED);
      service.assess(RunningService.seed("03"));
      Receiver.Received first = shop.next();
      Receiver.Received second = shop.next();
      assertThat(first.status()).isEqualTo(302);
      assertThat(second.id()).isEqualTo(first.id());
      end(subscription);
    }
  }

  @Test
  void aServiceKilledBetweenAnswerAndSendingSendsWhenItIsStartedAgain(@TempDir Path other)
      throws Exception {
    try (Receiver shop = new Receiver(n -> 200)) {
      String self;
      try (ServiceProcess killed =
          ServiceProcess.start(other, QUICK[0], "--standproud.events.poll=1h")) {
        assertThat(subscribe(killed.caller(), shop.url(), JUDGED).statusCode()).isEqualTo(201);
        self =
            killed
                .caller()
                .assess(RunningService.seed("03"))
                .headers()
                .firstValue("Location")
                .get();
      }
      try (RunningService again = RunningService.start(other, RULES, QUICK)) {
        JsonNode event = JsonMapper.shared().readTree(shop.next().body());
        assertThat(event.at("/data/self").stringValue()).isEqualTo(self);
        assertThat(again.get(self).statusCode()).isEqualTo(200);
      }
    }
  }

  @Test
  void onPostgresTooEventsAreSentKeysAreStoredAndAPublishedRuleBaseSendsAnEvent(
      @TempDir Path other, @TempDir Path cards) throws Exception {
    Path card = Path.of("reach/REACH-001.yaml");
    String text = Files.readString(RULES.resolve(card));
    Files.createDirectories(cards.resolve("reach"));
    Files.writeString(cards.resolve(card), text);
    try (PostgresServer server = new PostgresServer();
        Receiver shop = new Receiver(n -> n == 1 ? 500 : 200);
        RunningService onPostgres =
            RunningService.start(
                other,
                cards,
                QUICK[0],
                QUICK[1],
                QUICK[2],
                "--spring.datasource.url=" + server.emptyDatabaseUrl())) {
      RunningService.Caller caller = onPostgres.caller();
      subscribe(caller, shop.url(), "org.standproud.rulebase.published");
      Files.writeString(cards.resolve(card), text.replace("no room: 0 mm", "no room: 0.5 mm"));
      JsonNode reloaded =
          RunningService.json(caller.post("/v1/rules/reload", "", "application/json"));
      assertThat(shop.next().status()).isEqualTo(500);
      JsonNode event = JsonMapper.shared().readTree(shop.next().body());
      assertThat(event.at("/data/ruleBase")).isEqualTo(reloaded.get("revision"));

      String setup = RunningService.seed("11").toString();
      assertThat(keyed(caller, setup)).isEqualTo(keyed(caller, setup));
    }
  }

  private static String keyed(RunningService.Caller caller, String setup) {
    HttpResponse<String> answer =
        caller.send(
            caller
                .to("/v1/assessments")
                .header("Content-Type", "application/json")
                .header("Idempotency-Key", "once")
                .POST(HttpRequest.BodyPublishers.ofString(setup)));
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
    return answer.body();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https://localhost/x",
        "http://shop.example/x",
        "https://10.0.0.1/x",
        "https://169.254.169.254/x",
        "https://[::1]/x",
        "https://[::ffff:10.0.0.1]/x",
        "https://[fd00::1]/x",
        "https://user@example.org/x",
        "ftp://127.0.0.1/x",
        "file:///etc/passwd",
        "not an address"
      })
  void aTargetThatOnlyTheServiceCouldReachIsRefused(String target) {
    HttpResponse<String> refused = subscribe(service.caller(), target, JUDGED);
    assertThat(refused.statusCode()).as(refused.body()).isEqualTo(400);
  }

  @Test
  void anIncompleteSubscriptionIsRefusedWithWhatIsMissing() {
    HttpResponse<String> refused =
        service.caller().post("/v1/subscriptions", "{\"types\":[]}", "application/json");
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body())
        .contains("its members are target, types; look at target")
        .doesNotContain("null");
  }

  @Test
  void anUnknownTypeIsRefusedAndASecretIsReturnedOnce() {
    assertThat(subscribe(service.caller(), "http://127.0.0.1:1/x", "x").statusCode())
        .isEqualTo(400);
    JsonNode made =
        RunningService.json(subscribe(service.caller(), "http://127.0.0.1:1/x", JUDGED));
    String secret = made.get("secret").stringValue();
    assertThat(secret).startsWith("whsec_");
    assertThat(service.get("/v1/subscriptions").body())
        .contains(made.get("id").stringValue())
        .doesNotContain(secret);
    end(made);
    String self = "/v1/subscriptions/" + made.get("id").stringValue();
    assertThat(service.get(self).statusCode()).isEqualTo(404);
  }

  private static JsonNode subscribe(Receiver shop, String type) {
    HttpResponse<String> made = subscribe(service.caller(), shop.url(), type);
    assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
    return RunningService.json(made);
  }

  private static HttpResponse<String> subscribe(
      RunningService.Caller caller, String target, String type) {
    return caller.post(
        "/v1/subscriptions",
        "{\"target\":\"%s\",\"types\":[\"%s\"]}".formatted(target, type),
        "application/json");
  }

  private static void end(JsonNode subscription) {
    String self = "/v1/subscriptions/" + subscription.get("id").stringValue();
    HttpRequest.Builder delete = service.caller().to(self).DELETE();
    assertThat(service.caller().send(delete).statusCode()).isEqualTo(204);
  }

  /** Asks until the last try, which the receiver has seen, is written down too. */
  private static JsonNode deliveryOnceIn(String subscription, String state) {
    Instant end = Instant.now().plus(Duration.ofMinutes(2));
    while (Instant.now().isBefore(end)) {
      JsonNode all = RunningService.json(service.get(subscription + "/deliveries"));
      if (all.size() == 1 && all.get(0).get("state").stringValue().equals(state)) {
        return all.get(0);
      }
    }
    throw new AssertionError("no delivery came to be " + state);
  }

  /** By the Standard Webhooks specification 1.0.0, section on signatures. */
  private static String signature(JsonNode subscription, Receiver.Received sent) throws Exception {
    String secret = subscription.get("secret").stringValue().substring("whsec_".length());
    Mac mac = Mac.getInstance("HmacSHA256");
    mac.init(new SecretKeySpec(Base64.getDecoder().decode(secret), "HmacSHA256"));
    String signed = sent.id() + "." + sent.timestamp() + "." + sent.body();
    return "v1,"
        + Base64.getEncoder().encodeToString(mac.doFinal(signed.getBytes(StandardCharsets.UTF_8)));
  }
}
