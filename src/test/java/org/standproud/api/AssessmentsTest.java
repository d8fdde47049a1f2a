package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.IntegrationTest;
import org.standproud.advice.Cautions;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CanonicalText;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Set-ups of the demo shop, posted as a shop system would post them. */
@IntegrationTest
class AssessmentsTest {

  private final RunningService service = RunningService.shared();

  static Stream<Path> setups() {
    return RunningService.seedFiles().stream();
  }

  @ParameterizedTest
  @MethodSource("setups")
  void everySetUpOfTheShopIsJudgedAndComesBackByItsIdByteForByte(Path file) {
    HttpResponse<String> answer = service.assess(RunningService.text(file));

    assertThat(answer.statusCode()).isEqualTo(201);
    JsonNode said = RunningService.json(answer);
    String self = "/v1/assessments/" + said.get("id").stringValue();
    assertThat(answer.headers().firstValue("Location")).hasValue(self);
    assertThat(answer.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
    assertThat(answer.headers().firstValue("Cache-Control")).hasValue("no-store");
    assertThat(service.get(self).body()).isEqualTo(answer.body());
    assertThat(texts(said.get("cautions"))).isEqualTo(Cautions.all());
  }

  /** Each file says in its note what is wrong with the set-up. */
  @ParameterizedTest
  @ValueSource(strings = {"03", "04", "05", "06", "07", "08", "09", "11", "12"})
  void noSetUpWithSomethingWrongMayRun(String start) {
    JsonNode said = assess(RunningService.seed(start));
    assertThat(said.get("verdict").stringValue()).isNotEqualTo("run");
    assertThat(said.get("findings").size()).isPositive();
    assertThat(said.get("score").intValue()).isLessThan(100);
  }

  @Test
  void aPlateBarelyGrippedUnderAHeavyCutIsNotRun() {
    JsonNode said = assess(RunningService.seed("03"));
    assertThat(said.get("verdict").stringValue()).isEqualTo("do not run");
    assertThat(said.get("summary").stringValue()).startsWith("Do not run. ");
  }

  @Test
  void anUnmeasuredSetUpIsNotRunAndShowsWhatToMeasure() {
    JsonNode said = assess(RunningService.seed("12"));
    assertThat(said.get("verdict").stringValue()).isEqualTo("do not run");
    assertThat(said.get("measureFirst").size()).isPositive();
    assertThat(said.get("assumptions").size()).isPositive();
  }

  @ParameterizedTest
  @MethodSource("setups")
  void theSameSetUpInInchesIsJudgedTheSame(Path file) {
    JsonNode metric = assess(RunningService.text(file));
    ObjectNode twin = twin(RunningService.text(file));
    JsonNode inch = assess(twin);
    assertThat(inch.get("verdict")).isEqualTo(metric.get("verdict"));
    assertThat(findings(inch)).isEqualTo(findings(metric));
  }

  @Test
  void aCallerInInchesIsAnsweredInInches() {
    JsonNode said = assess(twin(RunningService.text(RunningService.seedFiles().get(0))));
    assertThat(said.get("units").stringValue()).isEqualTo("inch");
    assertThat(fact(said, "stick-out").get("unit").stringValue()).isEqualTo("in");
    assertThat(fact(said, "stick-out").get("value").doubleValue())
        .isCloseTo(30 / 25.4, Offset.offset(5e-6)); // answers show six figures
  }

  @Test
  void theForcesOfASetUpMayBeWorkedOutFromAPublishedSet() {
    String example =
        RunningService.text(Path.of("api-docs/examples/published-force-coefficients.json"));
    JsonNode said = assess(example);
    assertThat(fact(said, "force law").get("value").stringValue())
        .isEqualTo("al 6061-t6 with carbide, set 160");
    assertThat(said.get("assumptions").toString())
        .contains("/stock/material/forceCoefficients", "no axial terms")
        .doesNotContain("measured in ISO 513 group");

    JsonNode steel = assess(example.replace("\"6061-T6\"", "\"1045 hot rolled\""));
    assertThat(steel.get("assumptions").toString())
        .contains("measured in ISO 513 group N, the stock is of group P");

    JsonNode usual = assess(RunningService.text(Path.of("api-docs/examples/setup.json")));
    assertThat(fact(usual, "force law").get("value").stringValue()).isEqualTo("kienzle");
  }

  @Test
  void anUnknownSetOfCoefficientsIsRefusedWithTheSetsThereAre() {
    String request =
        RunningService.text(Path.of("api-docs/examples/published-force-coefficients.json"))
            .replace("set 160", "set 999");
    HttpResponse<String> answer = service.assess(request);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("forceCoefficients", "al 6061-t6 with carbide, set 160", "kienzle");
  }

  /**
   * Set-up 01 is milled by a cutter wider than the stock; the sense of its push follows the feed.
   */
  @Test
  void reversingTheFeedOfACoveringCutterSwapsTheJawThatTakesTheLoad() {
    ObjectNode one = RunningService.seed("01");
    ((ObjectNode) one.get("cut")).put("feed", "-x");
    ObjectNode other = RunningService.seed("01");
    ((ObjectNode) other.get("cut")).put("feed", "+x");
    assertThat(fact(assess(one), "load jaw").get("value").stringValue()).isEqualTo("fixed jaw");
    assertThat(fact(assess(other), "load jaw").get("value").stringValue()).isEqualTo("movable jaw");
  }

  @Test
  void anAssessmentIsFoundByJobOrderNewestFirstAndPageByPage() {
    ObjectNode setup = RunningService.seed("02");
    String order = "J-" + UUID.randomUUID();
    ((ObjectNode) setup.get("job")).put("jobOrder", order);
    List<String> made = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      made.add(0, assess(setup).get("id").stringValue());
    }
    String query = "/v1/assessments?limit=2&jobOrder=" + order;
    JsonNode first = RunningService.json(service.get(query));
    JsonNode second =
        RunningService.json(service.get(query + "&cursor=" + first.get("next").stringValue()));
    List<String> found = ids(first);
    found.addAll(ids(second));
    assertThat(found).isEqualTo(made);
    assertThat(second.has("next")).isFalse();
  }

  @Test
  void anAssessmentIsFoundByWhatACardSaidOfIt() {
    JsonNode said = assess(RunningService.seed("11"));
    String found =
        service.get("/v1/assessments?card=REACH-001&severity=stop&kind=fail&limit=200").body();
    assertThat(found).contains(said.get("id").stringValue());
    assertThat(service.get("/v1/assessments?card=NONE-999").body()).doesNotContain("\"id\"");
  }

  @Test
  void aPlanThatLeavesTooMuchToItsFinishNamesThePassThatTakesIt() {
    ObjectNode setup = RunningService.seed("01");
    setup.set("passes", PASSES);
    JsonNode said = assess(setup);
    JsonNode finding = finding(said, "FIN-019");
    assertThat(finding.get("message").stringValue())
        .contains("After roughing 0.5 mm then 0.5 mm the finish takes 0.2 mm then 0.8 mm");
    assertThat(finding.get("distance").stringValue())
        .startsWith("the limit is 0.3 mm, number 2 is 0.8 mm");

    JsonNode trace = RunningService.json(service.get(said.get("links").get("trace").stringValue()));
    JsonNode card =
        stream(trace.get("cards"))
            .filter(c -> c.get("card").stringValue().equals("FIN-019"))
            .findFirst()
            .orElseThrow();
    JsonNode condition = card.get("conditions").get(1);
    assertThat(condition.get("words").stringValue())
        .isEqualTo("for some finish of finishing depths, finish is more than most left (0.3 mm)");
    assertThat(condition.get("margin").get("place").intValue()).isEqualTo(2);
    assertThat(condition.get("facts").get(0).get("bands")).hasSize(2);
    JsonNode flip = condition.get("margin").get("flips").get(0);
    assertThat(flip.get("fact").stringValue()).isEqualTo("finishing depths");
    assertThat(flip.get("likely").doubleValue()).isCloseTo(0.0003, Offset.offset(1e-12));
  }

  @Test
  void aRequestWithOnePassIsNotHeldUpByCardsAboutSeveral() {
    JsonNode said = assess(RunningService.seed("01"));
    assertThat(findings(said)).noneMatch(f -> f.contains("FIN-019"));
    ObjectNode other = RunningService.seed("01");
    other.set("passes", JSON.readTree("[{\"stage\":\"rough\",\"axialDepth\":0.4}]"));
    HttpResponse<String> refused = service.assess(other.toString());
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("/passes", "none of these passes");
  }

  private static final JsonMapper JSON = JsonMapper.shared();

  private static final JsonNode PASSES =
      JSON.readTree(
          """
          [{"stage": "rough", "axialDepth": 0.5}, {"stage": "rough", "axialDepth": 0.5},
           {"stage": "finish", "axialDepth": 0.2}, {"stage": "finish", "axialDepth": 0.8}]\
          """);

  private static JsonNode finding(JsonNode said, String card) {
    return stream(said.get("findings"))
        .filter(f -> f.get("card").stringValue().equals(card))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theTraceHasEveryCardAndTheEvidenceEveryFact() {
    JsonNode said = assess(RunningService.seed("03"));
    JsonNode links = said.get("links");
    JsonNode trace = RunningService.json(service.get(links.get("trace").stringValue()));
    JsonNode rules = RunningService.json(service.get("/v1/rules"));
    assertThat(trace.get("cards").size()).isEqualTo(rules.get("rules").size());
    assertThat(trace.get("ruleBase")).isEqualTo(said.get("versions").get("ruleBase"));
    JsonNode condition = trace.get("cards").get(0).get("conditions").get(0);
    assertThat(condition.propertyNames()).contains("written", "words", "truth", "facts");

    JsonNode evidence = RunningService.json(service.get(links.get("evidence").stringValue()));
    assertThat(evidence.get("facts").size()).isEqualTo(said.get("evidence").size());
    JsonNode stickOut =
        stream(evidence.get("facts"))
            .map(line -> line.get("value"))
            .filter(value -> value.get("fact").stringValue().equals("stick-out"))
            .findFirst()
            .orElseThrow();
    assertThat(stickOut.get("unit").stringValue()).isEqualTo("m");
    assertThat(stickOut.get("band").get("likely").doubleValue()).isEqualTo(0.092);
  }

  private JsonNode assess(Object setup) {
    HttpResponse<String> answer = service.assess(setup);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
    return RunningService.json(answer);
  }

  private static ObjectNode twin(String request) {
    try {
      CatalogueReading reading = CatalogueReader.read(Path.of("seeds"));
      Catalogue catalogue = ((CatalogueReading.Loaded) reading).catalogue();
      Reading read = new SetupReader(catalogue).readJson(request);
      return CanonicalText.request(((Reading.Accepted) read).setup(), UnitSystem.INCH);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode fact(JsonNode said, String name) {
    return stream(said.get("evidence"))
        .filter(fact -> fact.get("name").stringValue().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> findings(JsonNode said) {
    return stream(said.get("findings"))
        .map(f -> f.get("card") + " " + f.get("kind") + " " + f.get("severity"))
        .toList();
  }

  private static List<String> ids(JsonNode list) {
    return new ArrayList<>(
        stream(list.get("assessments")).map(line -> line.get("id").stringValue()).toList());
  }

  private static List<String> texts(JsonNode list) {
    return stream(list).map(JsonNode::stringValue).toList();
  }

  private static Stream<JsonNode> stream(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false);
  }
}
