package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;
import org.standproud.audit.chain.ChainExport;
import org.standproud.audit.chain.PublicCheck;
import org.standproud.audit.chain.VerifyingKey;
import tools.jackson.databind.JsonNode;

/** What an auditor asks of the running service. */
@IntegrationTest
class AuditorTest {

  private static @TempDir Path audit;
  private static RunningService service;

  private String self = "";
  private JsonNode answer;

  @BeforeAll
  static void start() {
    service = RunningService.start(audit, Path.of("rules"));
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  @BeforeEach
  void aPlateBarelyGrippedIsAssessed() {
    HttpResponse<String> sent = service.assess(RunningService.seed("03"));
    answer = RunningService.json(sent);
    self = sent.headers().firstValue("Location").orElseThrow();
  }

  @Test
  void aRecordedAnswerIsGivenAgainByteForByteAndComparedWithToday() {
    JsonNode replay = get(self + "/replay");
    assertThat(replay.get("outcome").stringValue()).isEqualTo("REPRODUCED");
    assertThat(replay.get("differences").size()).isZero();
    JsonNode today = get(self + "/reassessment");
    assertThat(today.get("findings").size()).isZero();
    String then = answer.at("/versions/ruleBase").stringValue();
    assertThat(get(self + "/reassessment?ruleBase=" + then).get("findings").size()).isZero();
    assertThat(service.get(self + "/reassessment?ruleBase=none").statusCode()).isEqualTo(409);
  }

  @Test
  void anAcceptedStopIsShownBesideTheFindingNowAndNextTimeAndTheVerdictStays() {
    String card = answer.at("/findings/0/card").stringValue();
    HttpResponse<String> accepted = accept(card, Instant.now().plus(7, ChronoUnit.DAYS));
    assertThat(accepted.statusCode()).as(accepted.body()).isEqualTo(201);

    JsonNode decided = get(self + "/acceptances");
    assertThat(decided.get("verdict").stringValue()).isEqualTo("do not run");
    assertThat(decided.get("findings").size()).isEqualTo(answer.get("findings").size());
    assertThat(decided.at("/findings/0/acceptances").toString()).contains("M. Weaver", "in force");

    HttpResponse<String> next = service.assess(RunningService.seed("03"));
    JsonNode later = RunningService.json(next);
    assertThat(later.get("verdict")).isEqualTo(answer.get("verdict"));
    assertThat(later.get("score")).isEqualTo(answer.get("score"));
    assertThat(later.at("/findings/0/kind")).isEqualTo(answer.at("/findings/0/kind"));
    assertThat(later.at("/findings/0/acceptances").toString()).contains("A second clamp");
    String laterSelf = next.headers().firstValue("Location").orElseThrow();
    assertThat(get(laterSelf + "/replay").get("outcome").stringValue()).isEqualTo("REPRODUCED");

    String id = RunningService.json(accepted).get("id").stringValue();
    String back = "{\"reason\":\"The clamp is broken.\",\"by\":" + FOREMAN + "}";
    assertThat(post(self + "/acceptances/" + id + "/withdrawal", back).statusCode()).isEqualTo(201);
    assertThat(get(self + "/acceptances").at("/findings/0/acceptances").toString())
        .contains("withdrawn", "The clamp is broken.");
  }

  @Test
  void anAcceptanceOfNothingOrForTooLongOrWithAWordTooManyIsRefused() {
    Instant week = Instant.now().plus(7, ChronoUnit.DAYS);
    assertThat(accept("NO-SUCH-CARD", week).statusCode()).isEqualTo(400);
    String card = answer.at("/findings/0/card").stringValue();
    assertThat(accept(card, Instant.now().plus(400, ChronoUnit.DAYS)).statusCode()).isEqualTo(400);
    assertThat(accept(card, Instant.now().minusSeconds(5)).statusCode()).isEqualTo(400);
    assertThat(post(self + "/acceptances", "{\"card\":\"" + card + "\"}").statusCode())
        .isEqualTo(400);
    assertThat(post(self + "/acceptances", "{\"colour\":1}").statusCode()).isEqualTo(400);
    assertThat(post(self + "/acceptances", "{").statusCode()).isEqualTo(400);
    assertThat(
            service
                .get("/v1/assessments/" + new java.util.UUID(0, 0) + "/acceptances")
                .statusCode())
        .isEqualTo(404);
  }

  @Test
  void recordsLeaveAsATableAndAsWholeRecordsOnALine() throws IOException {
    String csv = body("/v1/audit/records?jobOrder=TLW-0103&severity=stop", "text/csv");
    List<CSVRecord> rows = new ArrayList<>();
    CSVFormat.RFC4180
        .builder()
        .setHeader()
        .setSkipHeaderRecord(true)
        .get()
        .parse(new StringReader(csv))
        .forEach(rows::add);
    assertThat(rows).isNotEmpty();
    assertThat(rows.get(0).get("verdict")).isEqualTo("do not run");
    assertThat(rows.get(0).get("findings")).contains(":stop:");

    String lines = body("/v1/audit/records?jobOrder=TLW-0103", "application/x-ndjson");
    assertThat(lines.lines().findFirst().orElseThrow())
        .contains("\"answer\":", answer.get("id").stringValue());
    assertThat(body("/v1/audit/records?jobOrder=UNKNOWN", "application/x-ndjson")).isEmpty();
    assertThat(service.get("/v1/audit/records?jobOrdr=x").statusCode()).isEqualTo(400);
  }

  @Test
  void theChainIsWholeHereAndWhereverItIsCheckedWithThePublicKey() throws IOException {
    assertThat(get("/v1/audit/verification").get("faults").size()).isZero();
    Path file =
        Files.writeString(
            Files.createTempFile("chain", ".ndjson"),
            body("/v1/audit/chain", "application/x-ndjson"));
    VerifyingKey key = VerifyingKey.of(body("/v1/audit/public-key", "text/plain"));

    assertThat(ChainExport.verify(file, new PublicCheck(List.of(key)), List.of()).whole()).isTrue();
    Files.delete(file);
  }

  @Test
  void cardsThatNeverSpokeAreListedBesideThoseThatDid() {
    JsonNode use = get("/v1/audit/rules");
    String card = answer.at("/findings/0/card").stringValue();
    List<String> silent = new ArrayList<>();
    for (JsonNode one : use) {
      if (one.get("fails").asLong() + one.get("opens").asLong() == 0) {
        silent.add(one.get("cardId").stringValue());
      }
    }
    assertThat(silent).isNotEmpty().doesNotContain(card);
    assertThat(get("/v1/audit/rules/counts?card=" + card + "&span=PT1H").size()).isPositive();
    assertThat(service.get("/v1/audit/rules/counts?span=1d").statusCode()).isEqualTo(400);
  }

  @Test
  void whatWasTakenAwayIsGoneAndTheChainSaysSo() throws IOException {
    try (RunningService other =
        RunningService.start(Files.createTempDirectory("records"), Path.of("rules"))) {
      HttpResponse<String> sent = other.assess(RunningService.seed("01"));
      String place = sent.headers().firstValue("Location").orElseThrow();
      String order =
          "{\"before\":\"%s\",\"mask\":\"ACCOUNT\",\"reason\":\"A year is over.\",\"by\":%s}"
              .formatted(Instant.now().plusSeconds(1), FOREMAN);
      HttpResponse<String> taken =
          other.caller().post("/v1/audit/withholdings", order, "application/json");

      assertThat(taken.body()).isEqualTo("{\"records\":1}");
      assertThat(other.get(place).statusCode()).isEqualTo(410);
      assertThat(other.get(place + "/acceptances").statusCode()).isEqualTo(410);
      assertThat(RunningService.json(other.get(place + "/replay")).get("outcome").stringValue())
          .isEqualTo("NOT_POSSIBLE");
      assertThat(RunningService.json(other.get("/v1/audit/verification")).get("faults").size())
          .isZero();
    }
  }

  private static final String FOREMAN = "{\"name\":\"M. Weaver\",\"role\":\"foreman\"}";

  private HttpResponse<String> accept(String card, Instant expires) {
    return post(
        self + "/acceptances",
        ("{\"card\":\"%s\",\"reason\":\"A second clamp holds the top.\",\"by\":%s,"
                + "\"expires\":\"%s\",\"forJobOrder\":true}")
            .formatted(card, FOREMAN, expires));
  }

  private static HttpResponse<String> post(String path, String body) {
    return service.caller().post(path, body, "application/json");
  }

  private static JsonNode get(String path) {
    HttpResponse<String> answered = service.get(path);
    assertThat(answered.statusCode()).as(answered.body()).isEqualTo(200);
    return RunningService.json(answered);
  }

  private static String body(String path, String accept) {
    HttpResponse<String> sent =
        service.caller().send(service.caller().to(path).header("Accept", accept).GET());
    assertThat(sent.statusCode()).as(sent.body()).isEqualTo(200);
    assertThat(sent.headers().firstValue("Content-Type").orElseThrow()).startsWith(accept);
    return sent.body();
  }
}
