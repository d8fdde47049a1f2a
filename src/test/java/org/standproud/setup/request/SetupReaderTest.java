package org.standproud.setup.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.setup.Backing;
import org.standproud.setup.BackingKind;
import org.standproud.setup.Band;
import org.standproud.setup.Clamp;
import org.standproud.setup.JawSide;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

class SetupReaderTest {

  private static ObjectNode with(String start, String pointer, String json) {
    ObjectNode request = Seeds.request(start);
    put(request, pointer, Seeds.json(json));
    return request;
  }

  private static void put(ObjectNode request, String pointer, JsonNode value) {
    int cut = pointer.lastIndexOf('/');
    ((ObjectNode) request.at(pointer.substring(0, cut))).set(pointer.substring(cut + 1), value);
  }

  private static Problem only(JsonNode request) {
    List<Problem> problems = Seeds.problems(request);
    assertThat(problems).hasSize(1);
    return problems.get(0);
  }

  @Test
  void nineFaultsAreNineProblems() {
    ObjectNode request = Seeds.request("01");
    put(request, "/stock/length", Seeds.json("'long'"));
    put(request, "/stock/thicknes", Seeds.json("20"));
    put(request, "/stock/material", Seeds.json("'1018 cold drwn'"));
    put(request, "/hold/gripDepth", Seeds.json("{'value':40,'unit':'kg'}"));
    put(request, "/hold/stop", Seeds.json("'both'"));
    put(request, "/hold/clampingForce", Seeds.json("{'low':35,'high':25,'unit':'kN'}"));
    put(request, "/cutter", Seeds.json("'face mill 64, fresh'"));
    put(request, "/cut/spindleSpeed", Seeds.json("900000"));
    Seeds.object(request, "cut").remove("stage");
    assertThat(Seeds.problems(request))
        .extracting(Problem::pointer)
        .containsExactlyInAnyOrder(
            "/stock/length",
            "/stock/thicknes",
            "/stock/material",
            "/hold/gripDepth/unit",
            "/hold/stop",
            "/hold/clampingForce",
            "/cutter",
            "/cut/spindleSpeed",
            "/cut/stage");
  }

  @Test
  void aProblemHasValueRangeAndUnitOfTheCaller() {
    Problem inMetric = only(with("01", "/cut/spindleSpeed", "900000"));
    assertThat(inMetric.value()).isEqualTo("900000");
    assertThat(inMetric.allowed()).isEqualTo("from 6 to 90000");
    assertThat(inMetric.unit()).isEqualTo("rpm");
    Problem ownUnit = only(with("01", "/stock/length", "{'value':900,'unit':'ft'}"));
    assertThat(ownUnit.pointer()).isEqualTo("/stock/length/value");
    assertThat(ownUnit.allowed()).isEqualTo("from 0.0164042 to 9.84252");
    assertThat(ownUnit.unit()).isEqualTo("ft");
  }

  @Test
  void aMisspeltFieldOrWordOrNameGetsTheNearestAsAHint() {
    assertThat(only(with("01", "/stock/hieght", "70")).hint())
        .isEqualTo("did you mean \"height\"?");
    assertThat(only(with("01", "/hold/seat", "'paralels'")).hint())
        .isEqualTo("did you mean \"parallels\"?");
    assertThat(only(with("01", "/stock/material", "'1018 cold drwn'")).hint())
        .startsWith("did you mean \"1018 cold drawn\"");
    assertThat(only(with("01", "/stock/length", "{'value':5,'unit':'inn'}")).hint())
        .isEqualTo("did you mean \"in\"?");
    assertThat(only(with("01", "/zzzzqqq", "5")).hint()).isNull();
  }

  @Test
  void theNameOfAnUnknownFieldIsEscapedInItsPointer() {
    ObjectNode request = Seeds.request("01");
    request.put("a/b~c\n", 1);
    assertThat(only(request).pointer()).isEqualTo("/a~1b~0c?");
  }

  @Test
  void aUnitMayBeSpeltAsShopsSpellIt() {
    for (String unit : List.of("lb", "lbs", "LBF")) {
      Setup setup =
          Seeds.accepted(with("01", "/hold/clampingForce", "{'value':4000,'unit':'" + unit + "'}"));
      // The pound-force in newtons: NIST SP 811 (2008), appendix B.8 (from memory).
      assertThat(setup.hold().clampingForceN().likely()).isCloseTo(4000 * 4.448222, within(0.01));
    }
  }

  @Test
  void aCommaThatCouldBeAPointOrThousandsIsAnsweredWithWhatToType() {
    assertThat(only(with("01", "/stock/length", "'1,200'")).message())
        .isEqualTo("1,200 could be 1200 or 1.200; type the one you mean");
  }

  @Test
  void aUnitOfAnotherDimensionIsNamedForWhatItMeasures() {
    assertThat(only(with("01", "/hold/clampingForce", "{'value':25,'unit':'N.m'}")).message())
        .isEqualTo("this is a unit of torque, but this field takes a force");
  }

  @Test
  void unknownIsAllowedOnlyWhereTheRecordAllowsIt() {
    assertThat(Seeds.accepted(with("01", "/hold/clampingForce", "null")).hold().clampingForceN())
        .isNull();
    assertThat(Seeds.accepted(with("01", "/stock/surface", "null")).stock().surface()).isNull();
    assertThat(only(with("01", "/stock/height", "null")).message()).isEqualTo("this must be known");
  }

  @Test
  void aCutterByNameMayBeGivenOtherEdges() {
    Setup setup =
        Seeds.accepted(
            with(
                "01",
                "/cutter",
                "{'name':'face mill 63, fresh','edge':'worn','missingTeeth':[1],'runOut':null}"));
    assertThat(setup.cutter().missingTeeth()).containsExactly(1);
    assertThat(setup.cutter().runOutM()).isNull();
    assertThat(setup.cutter().diameterM()).isEqualTo(0.063);
  }

  @Test
  void anUnknownNameWithHalfADescriptionIsOneProblemNotADozen() {
    Problem problem = only(with("01", "/cutter", "{'name':'face mil 63, fresh','edge':'worn'}"));
    assertThat(problem.pointer()).isEqualTo("/cutter/name");
    assertThat(problem.hint()).contains("face mill 63, fresh");
    assertThat(problem.message()).contains("lacks kind, toolMaterial");
  }

  /** n = v_c / (pi D) and f_z = v_f / (n z), ISO 3002 symbols. [derived] */
  @Test
  void cuttingSpeedAndTableFeedBecomeSpindleSpeedAndFeedPerTooth() {
    ObjectNode request = Seeds.request("01");
    ObjectNode cut = Seeds.object(request, "cut");
    cut.remove(List.of("spindleSpeed", "feedPerTooth"));
    cut.put("cuttingSpeed", 120).put("tableFeed", 363.78);
    Setup setup = Seeds.accepted(request);
    assertThat(setup.cut().spindleSpeedRevPerS() * 60).isCloseTo(606.30, within(0.01));
    assertThat(setup.cut().feedPerToothM().likely() * 1000).isCloseTo(0.12, within(1e-5));
  }

  @Test
  void aFeedThatStartsInsideTheStockIsRefusedAndOneLeftOutStartsJustClear() {
    assertThat(only(with("01", "/cut/leadIn", "30")).allowed()).isEqualTo("at least 31.5");
    ObjectNode request = Seeds.request("01");
    Seeds.object(request, "cut").remove("leadIn");
    assertThat(Seeds.accepted(request).cut().leadInM()).isEqualTo(0.0315);
  }

  @ParameterizedTest(name = "{1} = {2} is refused at {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "01 | /hold/gripDepth | 49.9 | /stock/none",
        "01 | /hold/gripDepth | 50.1 | /hold/gripDepth",
        "01 | /stock/height | 40 | /hold/gripDepth",
        "01 | /stock/thickness | 298 | /stock/thickness",
        "01 | /cut/axialDepth | 30.1 | /cut/axialDepth",
        "01 | /hold/packing/0/depth | 40.5 | /hold/packing/0/depth",
        "01 | /hold/packing/0/depth | null | /hold/packing/0/depth",
        "01 | /hold/packing/0/material | 'paper' | /hold/packing/0/material",
        "01 | /hold/packing/0/kind | 'card' | /hold/packing/0/material",
        "01 | /cut/offset | 41.5 | /cut/offset",
        "01 | /cut/side | 'fixed jaw' | /cut/side",
        "01 | /cut/radialDepth | 1 | /cut/radialDepth",
        "01 | /cut/cuttingSpeed | 100 | /cut/spindleSpeed",
        "01 | /cut/tableFeed | 100 | /cut/feedPerTooth",
        "01 | /cut/feed | null | /cut/feed",
        "02 | /cut/radialDepth | 25 | /cut/radialDepth",
        "02 | /cut/radialDepth | 10.5 | /cut/radialDepth",
        "02 | /cut/radialDepth | null | /cut/radialDepth",
        "02 | /cut/side | null | /cut/side",
        "02 | /cut/offset | 17 | /cut/offset",
        "02 | /cut/mode | 'both' | /cut/mode",
        "01 | /cutter | {'name':'face mill 63, fresh','missingTeeth':[5]} | /cutter/missingTeeth/0",
        "01 | /cutter | {'name':'face mill 63, fresh','missingTeeth':[1,1]} |"
            + " /cutter/missingTeeth/1",
        "01 | /cutter | {'name':'face mill 63, fresh','chippedTeeth':[1],'missingTeeth':[1]} |"
            + " /cutter/missingTeeth/0",
        "01 | /cutter | {'name':'face mill 63, fresh','missingTeeth':[0,1,2,3,4]} |"
            + " /cutter/missingTeeth",
        "01 | /cutter | {'name':'face mill 63, fresh','diameter':6000} | /cutter/diameter",
        "01 | /cutter | {'name':'face mill 63, fresh','stickOut':96} | /cutter/stickOut",
        "01 | /cutter | {'name':'face mill 63, fresh','teeth':2.5} | /cutter/teeth",
        "01 | /machine | {'name':'large knee mill','speeds':[100,90]} | /machine/speeds",
        "01 | /machine | {'name':'large knee mill','power':[]} | /machine/power",
        "01 | /machine | {'name':'large knee mill','leastSpeed':3000} | /machine/leastSpeed",
        "01 | /stock/length | 1e400 | /stock/length",
        "01 | /stock/deburred | 'yes' | /stock/deburred",
        "01 | /job/jobOrder | '' | /job/jobOrder",
        "01 | /job/jobOrder | 'a\\ud800' | /job/jobOrder",
        "01 | /job/jobOrder | 'a\\nb' | /job/jobOrder",
        "01 | /job | [] | /job",
        "01 | /hold/packing | {} | /hold/packing",
        "01 | /units | 'imperial' | /units"
      })
  void whatDoesNotFitTogetherIsRefusedWhereItStands(
      String start, String pointer, String json, String at) {
    List<String> where =
        Seeds.problems(with(start, pointer, json)).stream().map(Problem::pointer).toList();
    if (at.endsWith("/none")) {
      assertThat(where).isEmpty();
    } else {
      assertThat(where).contains(at);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "null",
        "12",
        "[]",
        "\"x\"",
        "{",
        "{} {}",
        "{\"units\":\"metric\",\"units\":\"inch\"}",
        "{\"units\":NaN}",
        "{\"stock\":{\"length\":Infinity}}",
        "\u0000",
      })
  void textThatIsNoRequestIsRefusedInWords(String text) {
    assertThat(Seeds.READER.readJson(text)).isInstanceOf(Reading.Refused.class);
  }

  @Test
  void nestingLengthAndCountAreBounded() {
    String deep = "[".repeat(5000) + "]".repeat(5000);
    assertThat(Seeds.READER.readJson("{\"stock\":" + deep + "}"))
        .isInstanceOf(Reading.Refused.class);
    assertThat(Seeds.READER.readJson("{\"stock\":" + "9".repeat(5000) + "}"))
        .isInstanceOf(Reading.Refused.class);
    String many = String.join(",", Stream.generate(() -> "{}").limit(50_000).toList());
    Problem tooLong = only(with("01", "/hold/packing", "[" + many + "]"));
    assertThat(tooLong.allowed()).isEqualTo("at most 4 items");
    ObjectNode wide = Seeds.request("01");
    for (int i = 0; i < 5000; i++) {
      wide.put("nothing" + i, i);
    }
    assertThat(Seeds.problems(wide)).hasSize(ProblemCollector.GREATEST_COUNT + 1);
  }

  @Test
  void whatIsQuotedBackIsShortAndPrintable() {
    Problem problem = only(with("01", "/hold/stop", "'" + "a\\u0007".repeat(500) + "'"));
    assertThat(problem.value()).hasSizeLessThan(80).doesNotContain("\u0007");
  }

  private static final String ROUGH = "{'stage':'rough','axialDepth':10,'radialDepth':2}";

  @Test
  void theCutAskedAboutIsOneOfThePassesPlanned() {
    assertThat(Seeds.accepted(with("02", "/passes", "[]")).passes()).isEmpty();
    assertThat(only(with("02", "/passes", "[" + ROUGH + "]")))
        .satisfies(
            p -> {
              assertThat(p.pointer()).isEqualTo("/passes");
              assertThat(p.message()).isEqualTo("the cut is none of these passes");
            });
  }

  @Test
  void theCutMayBeAskedAboutInOtherUnitsAndOtherWordsThanItsPass() {
    String inches =
        "["
            + ROUGH
            + ",{'stage':'finish','axialDepth':{'value':0.393701,'unit':'in'},"
            + "'radialDepth':{'value':0.011811,'unit':'in'}}]";
    assertThat(Seeds.accepted(with("02", "/passes", inches)).passes()).hasSize(2);
  }

  @Test
  void aPassOfABroadSideHasARadialDepthAndOneOfATopEdgeDoesNot() {
    ObjectNode side = Seeds.request("02");
    ((ObjectNode) side.at("/passes/0")).remove("radialDepth");
    assertThat(only(side).pointer()).isEqualTo("/passes/0/radialDepth");
    String top = "[{'stage':'rough','axialDepth':0.5},{'stage':'finish','axialDepth':0.2}]";
    assertThat(Seeds.accepted(with("01", "/passes", top)).passes()).hasSize(2);
    String wide = "[{'stage':'rough','axialDepth':0.5}," + ROUGH + "]";
    assertThat(only(with("01", "/passes", wide)).pointer()).isEqualTo("/passes/1/radialDepth");
  }

  @Test
  void aPlanOfMoreThanFiftyPassesIsRefused() {
    String many = "[" + "{'stage':'rough','axialDepth':0.5},".repeat(50);
    assertThat(only(with("01", "/passes", many + "{'stage':'rough','axialDepth':0.5}]")))
        .satisfies(p -> assertThat(p.allowed()).isEqualTo("at most 50 items"));
  }

  @Test
  void aSetupKeptFromBeforeThereWerePlansHasNone() {
    Setup setup = Seeds.accepted(Seeds.request("01"));
    String before = CanonicalText.of(setup).replace("\"passes\":[],", "");
    assertThat(before).doesNotContain("passes");
    assertThat(CanonicalText.setup(before)).isEqualTo(setup);
  }

  @Test
  void aStopThatIsNotThereHasNoHeight() {
    ObjectNode request = with("01", "/hold/stopHeight", "25");
    assertThat(Seeds.accepted(request).hold().stopHeightM()).isEqualTo(0.025);
    put(request, "/hold/stop", Seeds.json("'none'"));
    assertThat(only(request).pointer()).isEqualTo("/hold/stopHeight");
  }

  @Test
  void clampsAreReadByPositionAndWrittenBackUnchanged() {
    String clamps = "[{'side':'fixed jaw','along':-30,'length':25,'height':12.5}]";
    Setup setup = Seeds.accepted(with("01", "/hold/clamps", clamps));
    assertThat(setup.hold().clamps())
        .containsExactly(new Clamp(JawSide.FIXED, -0.03, 0.025, null, 0.0125));
    assertThat(Seeds.accepted(CanonicalText.request(setup, UnitSystem.METRIC)).hold())
        .isEqualTo(setup.hold());
    assertThat(CanonicalText.setup(CanonicalText.of(setup))).isEqualTo(setup);
    Problem high = only(with("01", "/hold/clamps", "[{'side':'fixed jaw','along':0,'length':25}]"));
    assertThat(high.pointer()).isEqualTo("/hold/clamps/0/height");
  }

  @Test
  void aBackingIsReadByPositionAndWrittenBackUnchanged() {
    String block =
        "[{'kind':'block','side':'movable jaw','along':-30,'length':25,'height':12.5,'holds':900}]";
    Setup setup = Seeds.accepted(with("01", "/hold/backing", block));
    assertThat(setup.hold().backing())
        .containsExactly(
            new Backing(
                BackingKind.BLOCK,
                JawSide.MOVABLE,
                -0.03,
                0.025,
                0.0125,
                null,
                Band.exactly(900),
                null));
    assertThat(Seeds.accepted(CanonicalText.request(setup, UnitSystem.METRIC)).hold())
        .isEqualTo(setup.hold());
    assertThat(CanonicalText.setup(CanonicalText.of(setup))).isEqualTo(setup);
    String bare = "[{'kind':'jack','side':'movable jaw','along':0,'length':25}]";
    assertThat(only(with("01", "/hold/backing", bare)).pointer())
        .isEqualTo("/hold/backing/0/height");
  }

  @Test
  void aHoldRecordedBeforeClampsExistedHasNone() {
    Setup setup = Seeds.accepted(Seeds.request("01"));
    String before =
        CanonicalText.of(setup).replace("\"clamps\":[],", "").replace("\"backing\":[],", "");
    assertThat(CanonicalText.setup(before.replace("\"stopHeightM\":null,", ""))).isEqualTo(setup);
  }
}
