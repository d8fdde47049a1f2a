package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.IntegrationTest;
import org.standproud.shop.CatalogueStore;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The catalogue changed by a shop engineer while set-ups are judged. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@IntegrationTest
class CatalogueEditsTest {

  private static final String VISE = "/v1/catalogue/vises/ground%20vise%20150";
  private static final String CUTTER = "/v1/catalogue/cutters/";

  private RunningService service;

  @BeforeAll
  void start(@TempDir Path directory) {
    service = RunningService.start(directory, Path.of("rules"));
  }

  @AfterAll
  void stop() {
    service.close();
  }

  private HttpResponse<String> send(String method, String path, String body, String... headers) {
    HttpRequest.Builder request =
        service
            .caller()
            .to(path)
            .header("Content-Type", "application/json")
            .method(method, HttpRequest.BodyPublishers.ofString(body));
    for (int i = 0; i < headers.length; i += 2) {
      request.header(headers[i], headers[i + 1]);
    }
    return service.caller().send(request);
  }

  private HttpResponse<String> table(String query, String csv) {
    return service
        .caller()
        .send(
            service
                .caller()
                .to("/v1/catalogue/imports/cutters" + query)
                .header("Content-Type", "text/csv")
                .POST(HttpRequest.BodyPublishers.ofString(csv)));
  }

  private static String tag(HttpResponse<String> response) {
    return response.headers().firstValue("ETag").orElseThrow();
  }

  private String catalogue() {
    return RunningService.json(service.get("/v1/catalogue")).get("revision").stringValue();
  }

  private ObjectNode cutter(String name) {
    ObjectNode cutter =
        (ObjectNode) RunningService.json(service.get(CUTTER + "face%20mill%2063,%20fresh"));
    return cutter.put("name", name);
  }

  @Test
  void theNextAssessmentNamesTheRevisionOfWhatWasChanged() {
    HttpResponse<String> before = service.get(VISE);
    ObjectNode vise = (ObjectNode) RunningService.json(before);
    vise.put("jawWidth", vise.get("jawWidth").doubleValue() - 2);
    HttpResponse<String> put =
        send("PUT", VISE + "?note=jaws%20ground%20again", vise.toString(), "If-Match", tag(before));
    assertThat(put.statusCode()).as(put.body()).isEqualTo(200);
    assertThat(tag(put)).isNotEqualTo(tag(before)).isEqualTo(tag(service.get(VISE)));

    JsonNode answer = RunningService.json(service.assess(RunningService.seed("01")));
    assertThat(answer.at("/versions/catalogue").stringValue()).isEqualTo(catalogue());
    JsonNode history = RunningService.json(service.get(VISE + "/history"));
    assertThat(history.get(0).get("note").stringValue()).isEqualTo("jaws ground again");
    assertThat(history.get(0).get("author").stringValue()).isEqualTo("anonymous");
    assertThat(history.get(0).get("catalogue").stringValue()).isEqualTo(catalogue());
    assertThat(history.get(1).get("author").stringValue()).isEqualTo("start of the service");
    JsonNode revision =
        RunningService.json(service.get("/v1/catalogue/revisions?revision=" + catalogue()));
    assertThat(revision.at("/0/changed/0/name").stringValue()).isEqualTo("ground vise 150");
  }

  @Test
  void aChangeThatDoesNotSayWhatItChangesOrSaysSomethingElseIsRefused() {
    HttpResponse<String> before = service.get(VISE);
    assertThat(send("PUT", VISE, before.body()).statusCode()).isEqualTo(428);
    assertThat(send("PUT", VISE, before.body(), "If-Match", "\"other\"").statusCode())
        .isEqualTo(412);
    assertThat(send("PUT", VISE, before.body(), "If-None-Match", "*").statusCode()).isEqualTo(412);
    assertThat(send("DELETE", VISE, "").statusCode()).isEqualTo(428);
    assertThat(
            send("PUT", CUTTER + "none", cutter("none").toString(), "If-Match", "*").statusCode())
        .isEqualTo(412);
    assertThat(tag(service.get(VISE))).isEqualTo(tag(before));
  }

  @Test
  void whatIsTakenAwayCanNoLongerBeNamedButItsHistoryStays() {
    ObjectNode cutter = cutter("loan, 3 weeks");
    String path = CUTTER + "loan,%203%20weeks";
    HttpResponse<String> made = send("PUT", path, cutter.toString(), "If-None-Match", "*");
    assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
    ObjectNode setup = RunningService.seed("01").put("cutter", "loan, 3 weeks");
    assertThat(service.assess(setup).statusCode()).isEqualTo(201);

    assertThat(send("DELETE", path + "?note=given%20back", "", "If-Match", tag(made)).statusCode())
        .isEqualTo(204);
    assertThat(service.get(path).statusCode()).isEqualTo(404);
    assertThat(service.assess(setup).statusCode()).isEqualTo(422);
    JsonNode history = RunningService.json(service.get(path + "/history"));
    assertThat(history.size()).isEqualTo(2);
    assertThat(history.get(0).has("revision")).isFalse();
    assertThat(history.get(0).get("note").stringValue()).isEqualTo("given back");
    assertThat(history.get(1).at("/item/diameter").doubleValue()).isEqualTo(63);
    assertThat(service.get(CUTTER + "never%20here/history").statusCode()).isEqualTo(404);
  }

  @Test
  void anErrorInAnItemIsReportedWithValueRangeAndUnit() {
    ObjectNode cutter = cutter("wrong").put("diameter", 9000).put("teeth", 0).put("colour", "red");
    HttpResponse<String> refused =
        send("PUT", CUTTER + "wrong?units=inch", cutter.toString(), "If-None-Match", "*");
    assertThat(refused.statusCode()).isEqualTo(422);
    JsonNode problem = RunningService.json(refused);
    assertThat(problem.get("type").stringValue()).isEqualTo("/problems/item-refused");
    assertThat(problem.get("errors"))
        .extracting(error -> error.get("pointer").stringValue())
        .contains("/diameter", "/teeth", "/colour");
    for (JsonNode error : problem.get("errors")) {
      if (error.get("pointer").stringValue().equals("/diameter")) {
        assertThat(error.get("value").stringValue()).isEqualTo("9000");
        assertThat(error.get("unit").stringValue()).isEqualTo("in");
        assertThat(error.get("allowed").stringValue()).contains("19.685");
      }
    }
    HttpResponse<String> other =
        send("PUT", CUTTER + "right", cutter("left").toString(), "If-None-Match", "*");
    assertThat(RunningService.json(other).at("/errors/0/pointer").stringValue()).isEqualTo("/name");
    assertThat(send("PUT", CUTTER + "x", "[1]", "If-None-Match", "*").statusCode()).isEqualTo(422);
    assertThat(send("PUT", CUTTER + "x", "{", "If-None-Match", "*").statusCode()).isEqualTo(400);
    assertThat(send("PUT", CUTTER + "x", cutter("x").put("units", "inch").toString()).statusCode())
        .isEqualTo(422);
  }

  @Test
  void anItemInInchesIsStoredAsSentAndShownInEither() {
    ObjectNode cutter =
        (ObjectNode)
            RunningService.json(service.get(CUTTER + "face%20mill%2063,%20fresh?units=inch"));
    cutter.put("name", "inch mill").put("diameter", 2.5);
    assertThat(
            send("PUT", CUTTER + "inch%20mill?units=inch", cutter.toString(), "If-None-Match", "*")
                .statusCode())
        .isEqualTo(201);
    // 25.4 mm to the inch, International Yard and Pound Agreement of 1959 [memory]
    assertThat(
            RunningService.json(service.get(CUTTER + "inch%20mill")).get("diameter").doubleValue())
        .isEqualTo(63.5);
    JsonNode detail = RunningService.json(service.get(CUTTER + "inch%20mill/history")).get(0);
    assertThat(detail.at("/item/units").stringValue()).isEqualTo("inch");
    assertThat(detail.at("/item/diameter").doubleValue()).isEqualTo(2.5);
  }

  @Test
  void ofTwoWhoChangeTheSameItemAtOnceOneMustLookAgain() throws Exception {
    String path = CUTTER + "contested";
    String first = tag(send("PUT", path, cutter("contested").toString(), "If-None-Match", "*"));
    ExecutorService engineers = Executors.newFixedThreadPool(6);
    List<Future<Integer>> answers = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      String body = cutter("contested").put("overhang", 96 + i).toString();
      answers.add(engineers.submit(() -> send("PUT", path, body, "If-Match", first).statusCode()));
    }
    List<Integer> statuses = new ArrayList<>();
    for (Future<Integer> answer : answers) {
      statuses.add(answer.get());
    }
    engineers.shutdown();
    assertThat(statuses).containsOnlyOnce(200).contains(412).hasSize(6);
    assertThat(statuses.stream().filter(s -> s == 412)).hasSize(5);
  }

  @Test
  void anUnchangedItemMakesNoRevision() {
    HttpResponse<String> now = service.get(CUTTER + "face%20mill%2080,%20fresh");
    HttpResponse<String> put =
        send("PUT", CUTTER + "face%20mill%2080,%20fresh", now.body(), "If-Match", tag(now));
    String again =
        tag(send("PUT", CUTTER + "face%20mill%2080,%20fresh", now.body(), "If-Match", tag(put)));
    assertThat(again).isEqualTo(tag(put));
    assertThat(
            RunningService.json(service.get(CUTTER + "face%20mill%2080,%20fresh/history")).size())
        .isLessThanOrEqualTo(2);
  }

  @Test
  void aTableKeyedBySymbolsIsTakenInAsOneRevision() {
    String csv =
        """
        name,DC [in],ZEFP,APMX [mm],LPR,KAPR,RE,FHA,BS,kind,toolMaterial,spin,stickOut,fluteLength,\
        shankDiameter,holderDiameter,rake,edgeRadius,chippedTeeth
        table mill A,2.5,5,5,95,45,0.8,0,1.2,face mill,carbide,clockwise,40,40,22,50,8,0.03,
        table mill B,3,6,5,95,90,0.8,0,1.4,face mill,carbide,clockwise,40,40,27,60,8,0.03,0 3
        """;
    String before = catalogue();
    JsonNode trial = RunningService.json(table("?dryRun=true", csv));
    assertThat(trial.at("/rows/0/status").stringValue()).isEqualTo("new");
    assertThat(catalogue()).isEqualTo(before);

    HttpResponse<String> imported = table("?note=crib%20count", csv);
    assertThat(imported.statusCode()).as(imported.body()).isEqualTo(200);
    assertThat(RunningService.json(imported).get("revision").stringValue()).isEqualTo(catalogue());
    JsonNode mill = RunningService.json(service.get(CUTTER + "table%20mill%20B"));
    assertThat(mill.get("diameter").doubleValue()).isEqualTo(76.2);
    assertThat(mill.get("enteringAngle").doubleValue()).isEqualTo(90);
    assertThat(mill.get("chippedTeeth").get(1).intValue()).isEqualTo(3);
    JsonNode revision = RunningService.json(service.get("/v1/catalogue/revisions?limit=1")).get(0);
    assertThat(revision.get("note").stringValue()).isEqualTo("crib count");
    assertThat(revision.get("changed").size()).isEqualTo(2);
    JsonNode again = RunningService.json(table("", csv));
    assertThat(again.at("/rows/1/status").stringValue()).isEqualTo("unchanged");

    HttpResponse<String> changed = table("", csv.replace("mill A,2.5", "mill A,2.25"));
    assertThat(changed.statusCode()).isEqualTo(422);
    assertThat(RunningService.json(changed).at("/rows/0/status").stringValue())
        .isEqualTo("refused");
    assertThat(
            RunningService.json(table("?replace=true", csv.replace("mill A,2.5", "mill A,2.25")))
                .at("/rows/0/status")
                .stringValue())
        .isEqualTo("changed");
  }

  @Test
  void oneBadRowRefusesTheImportAndIsReported() {
    String csv =
        """
        name,DC,ZEFP
        lone mill,20,4
        ,=1+1,two
        """;
    String before = catalogue();
    HttpResponse<String> refused = table("", csv);
    assertThat(refused.statusCode()).isEqualTo(422);
    JsonNode rows = RunningService.json(refused).get("rows");
    assertThat(rows.get(0).get("errors").toString()).contains("/greatestDepth");
    assertThat(rows.get(1).get("errors").toString()).contains("/diameter", "/teeth", "/name");
    assertThat(catalogue()).isEqualTo(before);
  }

  @Test
  void aListKeyedBySymbolsIsTakenInToo() {
    ObjectNode cutter = cutter("list mill");
    cutter.set("DC", cutter.remove("diameter"));
    cutter.set("LPR", cutter.remove("overhang"));
    HttpResponse<String> imported =
        send("POST", "/v1/catalogue/imports/cutters", "{\"cutters\":[" + cutter + "]}");
    assertThat(imported.statusCode()).as(imported.body()).isEqualTo(200);
    assertThat(service.get(CUTTER + "list%20mill").statusCode()).isEqualTo(200);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "name,DC,DC [in]|columns for the field diameter",
        "name,Ø|Unknown column",
        "name,DC [mm|Unknown column",
        "name|There are no rows"
      })
  void aTableThatIsNoneIsRefusedAsAWhole(String headings, String detail) {
    HttpResponse<String> refused = table("", headings + "\n");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(RunningService.json(refused).get("detail").stringValue()).contains(detail);
  }

  @Test
  void aNameWithASlashOrAPerCentIsAnItemToo() {
    String name = "10/20 at 50%";
    String path = CUTTER + URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    assertThat(send("PUT", path, cutter(name).toString(), "If-None-Match", "*").statusCode())
        .isEqualTo(201);
    assertThat(RunningService.json(service.get(path)).get("name").stringValue()).isEqualTo(name);
  }

  @Test
  void anotherReplicaOnTheSameStoreSeesTheChangeAtOnce() {
    CatalogueStore here = service.part(CatalogueStore.class);
    CatalogueStore replica = new CatalogueStore(service.part(DataSource.class), Clock.systemUTC());
    assertThat(replica.now().catalogue()).isEqualTo(here.now().catalogue());
    send("PUT", CUTTER + "seen", cutter("seen").toString(), "If-None-Match", "*");
    assertThat(replica.now().catalogue().cutters()).containsKey("seen");
    assertThat(replica.now().catalogue().revision()).isEqualTo(catalogue());
  }
}
