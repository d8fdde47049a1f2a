package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** An engineer edits a card over REST: from the first error to the roll back. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
@IntegrationTest
class CardsOverRestTest {

  private static final String FILE = "reach/REACH-001.yaml";
  private static final String CARD = "/v1/rules/REACH-001";
  private static final JsonMapper JSON = JsonMapper.shared();

  private static @TempDir Path folder;
  private static RunningService service;
  private static String card;

  @BeforeAll
  static void startWithOneCard() throws IOException {
    card = Files.readString(Path.of("rules").resolve(FILE));
    Path file = folder.resolve("rules").resolve(FILE);
    Files.createDirectories(file.getParent());
    Files.writeString(file, card);
    service = RunningService.start(folder.resolve("audit"), folder.resolve("rules"));
    assertThat(service.assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  @Test
  @Order(1)
  void aBrokenCardIsReportedByLineAndColumnWithTheNearestNameAndAnExample() {
    String broken = card.replace("height clearance < no room", "height clearence < no room");
    JsonNode reply = json(yaml("/v1/rule-base/checks?file=" + FILE, broken));
    assertThat(reply.get("passes").booleanValue()).isFalse();
    JsonNode error = reply.get("errors").get(0);
    String line = broken.split("\n")[error.get("line").intValue() - 1];
    assertThat(line.substring(error.get("column").intValue() - 1)).startsWith("height clearence");
    assertThat(error.get("nearest").stringValue()).isEqualTo("height clearance");
    assertThat(error.get("example").stringValue()).isNotEmpty();
    assertThat(reply.toString()).doesNotContain(folder.toString());
  }

  /** The whole of the shop's cards is some hundred kilobytes, more than a set-up may be. */
  @Test
  @Order(1)
  void allCardsOfTheShopAreSentAtOnce() throws IOException {
    ObjectNode edit = JSON.createObjectNode();
    ObjectNode files = edit.putObject("files");
    try (var paths = Files.walk(Path.of("rules"))) {
      for (Path path : paths.filter(p -> p.toString().endsWith(".yaml")).toList()) {
        files.put(Path.of("rules").relativize(path).toString(), Files.readString(path));
      }
    }
    assertThat(edit.toString().length()).isGreaterThan(65_536);
    JsonNode reply = json(post("/v1/rule-base/checks", edit));
    assertThat(reply.get("passes").booleanValue()).as(reply.toString()).isTrue();
    edit.put("note", "x".repeat(2 << 20));
    assertThat(post("/v1/rule-base/checks", edit).statusCode()).isEqualTo(413);
  }

  @Test
  @Order(2)
  void aCardIsFetchedOnlyWhenItChanged() {
    HttpResponse<String> first = service.get(CARD);
    String tag = first.headers().firstValue("ETag").orElseThrow();
    HttpResponse<String> again =
        service.caller().send(service.caller().to(CARD).header("If-None-Match", tag).GET());
    assertThat(again.statusCode()).isEqualTo(304);
    assertThat(service.get(CARD + "/text").body()).isEqualTo(card);
    assertThat(service.get("/v1/rules").headers().firstValue("ETag")).isPresent();
  }

  @Test
  @Order(3)
  void aDraftIsTriedOnASetUpAndOnAPastJobBesideWhatServes() {
    ObjectNode edit = edit(stricter());
    edit.set("setup", RunningService.seed("01"));
    JsonNode onSetup = json(post("/v1/rule-base/trials", edit));
    assertThat(onSetup.get("draft").get("verdict").stringValue()).isEqualTo("do not run");
    // The one card in service does not judge the hold, so nothing is promised.
    assertThat(onSetup.get("inService").get("verdict").stringValue()).isEqualTo("not judged");
    assertThat(onSetup.get("cards").get(0).get("card").stringValue()).isEqualTo("REACH-001");

    edit.remove("setup");
    edit.put("record", record());
    JsonNode onRecord = json(post("/v1/rule-base/trials", edit));
    assertThat(onRecord.get("draft")).isEqualTo(onSetup.get("draft"));
    assertThat(revisions()).hasSize(1);
  }

  @Test
  @Order(4)
  void whatADraftWouldChangeForPastJobsIsStreamedLineByLine() {
    ObjectNode edit = edit(stricter());
    edit.put("author", "Ann");
    HttpResponse<String> started = post("/v1/rule-base/impacts", edit);
    assertThat(started.statusCode()).isEqualTo(202);
    String where = started.headers().firstValue("Location").orElseThrow();
    HttpResponse<String> reply = service.get(where + "/progress");
    List<String> lines = reply.body().lines().toList();
    JsonNode last = JSON.readTree(lines.get(lines.size() - 1));
    assertThat(last.get("state").stringValue()).isEqualTo("done");
    assertThat(last.at("/report/verdicts/not judged -> do not run").intValue()).isEqualTo(1);
    assertThat(last.at("/report/byCard/REACH-001/appears").intValue()).isEqualTo(1);
    assertThat(json(service.get(where))).isEqualTo(last);
    HttpResponse<String> ended = service.caller().send(service.caller().to(where).DELETE());
    assertThat(ended.statusCode()).isEqualTo(200);
  }

  @Test
  @Order(5)
  void aProposalWaitsUntilItIsPublishedAndThenJudges() {
    ObjectNode edit = edit(stricter());
    edit.put("author", "Ann");
    edit.put("note", "we want to see under it");
    HttpResponse<String> proposed = post("/v1/rule-base/proposals", edit);
    assertThat(proposed.statusCode()).isEqualTo(201);
    String where = proposed.headers().firstValue("Location").orElseThrow();
    JsonNode shown = json(service.get(where));
    assertThat(shown.at("/changes/changed/REACH-001/0/field").stringValue())
        .isEqualTo("limit no room");
    String before = judgedBy();

    ObjectNode by = JSON.createObjectNode().put("author", "Bob");
    JsonNode published = json(post(where + "/publication", by));
    String revision = published.at("/revision/id").stringValue();
    assertThat(published.at("/revision/author").stringValue()).isEqualTo("Ann");
    assertThat(published.at("/revision/publisher").stringValue()).isEqualTo("Bob");
    assertThat(published.at("/impact/changed")).isNotEmpty();
    assertThat(judgedBy()).isEqualTo(revision).isNotEqualTo(before);
    assertThat(service.get(where).statusCode()).isEqualTo(404);
    assertThat(revisions()).hasSize(2);
    JsonNode changes = json(service.get("/v1/rule-base/revisions/" + revision + "/changes"));
    assertThat(changes.get("changed").propertyNames()).containsExactly("REACH-001");
  }

  @Test
  @Order(6)
  void aCardIsWrittenOnlyOverTheOneItsAuthorSaw() {
    HttpResponse<String> blind = put(card, null, "n");
    assertThat(blind.statusCode()).isEqualTo(428);
    HttpResponse<String> late = put(card, "\"0\"", "n");
    assertThat(late.statusCode()).isEqualTo(412);
    String tag = service.get(CARD).headers().firstValue("ETag").orElseThrow();
    HttpResponse<String> written = put(card, tag, "as it was");
    assertThat(written.statusCode()).isEqualTo(201);
    String where = written.headers().firstValue("Location").orElseThrow();
    ObjectNode by = JSON.createObjectNode().put("author", "Bob");
    assertThat(json(post(where + "/publication", by)).get("changed").booleanValue()).isTrue();
    assertThat(put(stricter(), tag, "late").statusCode()).isEqualTo(412);
    assertThat(revisions()).hasSize(3);
  }

  @Test
  @Order(7)
  void rollingBackPutsTheOldCardsIntoServiceAsANewRevision() {
    JsonNode second = revisions().get(1);
    ObjectNode by = JSON.createObjectNode().put("author", "Ann").put("note", "too mild");
    JsonNode back = json(post(second.get("self").stringValue() + "/rollback", by));
    assertThat(back.at("/revision/number").intValue()).isEqualTo(4);
    assertThat(back.at("/revision/contentHash")).isEqualTo(second.get("contentHash"));
    assertThat(judgedBy()).isEqualTo(back.at("/revision/id").stringValue());
  }

  @Test
  @Order(8)
  void cardsWrittenAgainstAnOlderRevisionAreAConflict() {
    ObjectNode edit = edit(card);
    edit.put("author", "Ann").put("note", "late");
    edit.put("onto", revisions().get(3).get("id").stringValue());
    HttpResponse<String> late = post("/v1/rule-base/proposals", edit);
    assertThat(late.statusCode()).isEqualTo(409);
    assertThat(json(late).get("type").stringValue()).isEqualTo("/problems/conflict");
  }

  @Test
  @Order(9)
  void aProposalNeedsANameAndAReason() {
    ObjectNode edit = edit(card);
    assertThat(post("/v1/rule-base/proposals", edit).statusCode()).isEqualTo(400);
    edit.put("author", "Ann");
    assertThat(post("/v1/rule-base/proposals", edit).body()).contains("note");
  }

  @Test
  @Order(10)
  void aReplayStillFindsTheRevisionThatJudged() {
    JsonNode replay = json(service.get("/v1/assessments/" + record() + "/replay"));
    assertThat(replay.get("outcome").stringValue()).isEqualTo("REPRODUCED");
  }

  /** Room enough to walk under, which no set-up of the shop has. */
  private static String stricter() {
    return card.replace("no room: 0 mm", "no room: 900 mm")
        .replace("height clearance: 1 mm}", "height clearance: 1000 mm}");
  }

  private static ObjectNode edit(String text) {
    ObjectNode edit = JSON.createObjectNode();
    edit.putObject("files").put(FILE, text);
    return edit;
  }

  private static String judgedBy() {
    return json(service.assess(RunningService.seed("01"))).at("/versions/ruleBase").stringValue();
  }

  private static String record() {
    JsonNode list = json(service.get("/v1/assessments")).get("assessments");
    return list.get(list.size() - 1).get("id").stringValue();
  }

  private static List<JsonNode> revisions() {
    return json(service.get("/v1/rule-base/revisions")).valueStream().toList();
  }

  private static HttpResponse<String> post(String path, ObjectNode body) {
    return service.caller().post(path, body.toString(), "application/json");
  }

  private static HttpResponse<String> yaml(String path, String text) {
    return service.caller().post(path, text, "application/yaml");
  }

  private static HttpResponse<String> put(String text, String tag, String note) {
    var request =
        service
            .caller()
            .to(CARD + "?author=Ann&note=" + note.replace(' ', '+'))
            .header("Content-Type", "application/yaml")
            .PUT(BodyPublishers.ofString(text));
    return service.caller().send(tag == null ? request : request.header("If-Match", tag));
  }

  private static JsonNode json(HttpResponse<String> response) {
    return RunningService.json(response);
  }
}
