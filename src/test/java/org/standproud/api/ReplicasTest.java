package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Services that share one database, and the folder that one of them watches. */
@IntegrationTest
class ReplicasTest {

  private static final String FILE = "reach/REACH-001.yaml";
  private static final String SOON = "--standproud.rules.follow-every=20ms";

  private @TempDir Path folder;
  private Path rules;
  private String card;

  @BeforeEach
  void oneCard() throws IOException {
    rules = folder.resolve("rules");
    card = Files.readString(Path.of("rules").resolve(FILE));
    write(card);
  }

  private void write(String text) throws IOException {
    Files.createDirectories(rules.resolve(FILE).getParent());
    Files.writeString(rules.resolve(FILE), text);
  }

  private RunningService start(String... more) {
    return RunningService.start(folder.resolve("audit"), rules, more);
  }

  @Test
  void whatOneServicePublishesTheOtherServesToo() {
    try (RunningService one = start(SOON);
        RunningService other = start(SOON)) {
      assertThat(revision(other)).isEqualTo(revision(one));
      String published = published(one, mild());
      assertThat(revision(one)).isEqualTo(published);
      await().atMost(30, TimeUnit.SECONDS).until(() -> revision(other).equals(published));
      assertThat(judgedBy(other)).isEqualTo(published);

      String back = published(other, card);
      await().atMost(30, TimeUnit.SECONDS).until(() -> revision(one).equals(back));
    }
  }

  @Test
  void aServiceStartsOnWhatWasLastPublishedThoughItsFolderIsBehind() {
    String published;
    try (RunningService service = start()) {
      published = published(service, mild());
    }
    try (RunningService again = start()) {
      assertThat(revision(again)).isEqualTo(published);
    }
  }

  @Test
  void aCardEditedWhileTheServiceStoodStillServesWhenItStarts() throws IOException {
    String first;
    try (RunningService service = start()) {
      first = revision(service);
    }
    write(mild());
    try (RunningService again = start()) {
      assertThat(revision(again)).isNotEqualTo(first);
      assertThat(again.get("/v1/rules/REACH-001/text").body()).isEqualTo(mild());
    }
  }

  @Test
  void aWatchedFolderPublishesOverTheSameGateAndABrokenCardChangesNothing() throws IOException {
    try (RunningService service = start("--standproud.rules.folder=watch")) {
      String first = revision(service);
      write(mild());
      await().atMost(30, TimeUnit.SECONDS).until(() -> !revision(service).equals(first));
      String second = revision(service);
      assertThat(judgedBy(service)).isEqualTo(second);
      write(mild().replace("height clearance <", "height clearence <"));
      await()
          .atMost(30, TimeUnit.SECONDS)
          .until(() -> service.get("/actuator/health/readiness").body().contains("clearence"));
      assertThat(revision(service)).isEqualTo(second);
    }
  }

  @Test
  void withTwoPersonApprovalAuthorsCannotPublishTheirOwnCards() {
    try (RunningService service = start("--standproud.rules.two-persons=true")) {
      String first = revision(service);
      JsonNode waits = propose(service, mild(), "Ann");
      HttpResponse<String> alone = publish(service, waits, "ann");
      assertThat(alone.statusCode()).isEqualTo(409);
      assertThat(alone.body()).contains("Someone other than Ann");
      assertThat(revision(service)).isEqualTo(first);
      assertThat(publish(service, waits, "Bob").statusCode()).isEqualTo(200);
      assertThat(revision(service)).isNotEqualTo(first);
    }
  }

  private String mild() {
    return card.replace("no room: 0 mm", "no room: 0.5 mm");
  }

  private static JsonNode propose(RunningService service, String text, String author) {
    String tag = service.get("/v1/rules/REACH-001/text").headers().firstValue("ETag").orElseThrow();
    var request =
        service
            .caller()
            .to("/v1/rules/REACH-001?note=because&author=" + author)
            .header("Content-Type", "application/yaml")
            .header("If-Match", tag)
            .PUT(BodyPublishers.ofString(text));
    return RunningService.json(service.caller().send(request)).get("proposal");
  }

  private static HttpResponse<String> publish(
      RunningService service, JsonNode proposal, String publisher) {
    String where = proposal.get("self").stringValue() + "/publication";
    String by = "{\"author\":\"" + publisher + "\"}";
    return service.caller().post(where, by, "application/json");
  }

  private static String published(RunningService service, String text) {
    HttpResponse<String> answer = publish(service, propose(service, text, "Ann"), "Ann");
    return RunningService.json(answer).at("/revision/id").stringValue();
  }

  private static String revision(RunningService service) {
    return RunningService.json(service.get("/v1/rules")).at("/revision/id").stringValue();
  }

  private static String judgedBy(RunningService service) {
    ObjectNode setup = RunningService.seed("01");
    return RunningService.json(service.assess(setup)).at("/versions/ruleBase").stringValue();
  }
}
