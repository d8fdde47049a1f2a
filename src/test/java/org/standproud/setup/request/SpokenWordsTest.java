package org.standproud.setup.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.setup.Band;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterKind;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.HandFeedPace;
import org.standproud.setup.HandleEffort;
import org.standproud.setup.Hold;
import org.standproud.setup.JawFaces;
import org.standproud.setup.Material;
import org.standproud.setup.Setup;
import org.standproud.setup.StockSurface;
import org.standproud.setup.ToolMaterial;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Vise;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Words of a shop. Sizes of vises and cutters and which grades a word covers are common practice,
 * no source; the grades themselves are those of the seeds, with their sources.
 */
class SpokenWordsTest {

  private static final SetupReader BARE = new SetupReader(Catalogue.EMPTY);

  private static final String REQUEST =
      """
      {'units':'metric','job':{'jobOrder':'1'},
       'stock':{'length':150,'thickness':20,'height':70,'material':'mild steel',
                'surface':'bright drawn'},
       'hold':{'vise':'6 inch vise','gripDepth':35,'clamping':'firm','faces':'wiped',
               'seat':'parallels','stop':'-x'},
       'machine':'knee mill','cutter':'63 mm face mill, carbide',
       'cut':{'operation':'top edge','stage':'rough','axialDepth':1,'offset':0,'feed':'-x',
              'cuttingSpeed':120,'handFeed':'slow','feedDrive':'hand'}}
      """;

  private static ObjectNode request() {
    return (ObjectNode) Seeds.json(REQUEST);
  }

  private static Setup accepted(JsonNode request) {
    Reading reading = BARE.read(request);
    if (reading instanceof Reading.Accepted accepted) {
      return accepted.setup();
    }
    throw new AssertionError(reading.toString().replace("Problem[", "\nProblem["));
  }

  private static Problem problem(JsonNode request) {
    Reading reading = BARE.read(request);
    assertThat(reading).isInstanceOf(Reading.Refused.class);
    List<Problem> problems = ((Reading.Refused) reading).problems();
    assertThat(problems).hasSize(1);
    return problems.get(0);
  }

  private static ObjectNode hold(ObjectNode request) {
    return Seeds.object(request, "hold");
  }

  @Test
  void aSetUpInWordsNeedsNothingOfACatalogue() {
    Setup setup = accepted(request());
    assertThat(setup.stock().material().name()).isEqualTo("mild steel (typical)");
    assertThat(setup.hold().vise().name()).isEqualTo("6 inch vise (typical)");
    assertThat(setup.machine().name()).isEqualTo("knee mill (typical)");
    assertThat(setup.cutter().name()).isEqualTo("63 mm face mill, carbide (typical)");
    assertThat(setup.stock().surface()).isEqualTo(StockSurface.MACHINED);
    assertThat(setup.hold().effort()).isEqualTo(HandleEffort.FIRM);
    assertThat(setup.hold().faces()).isEqualTo(JawFaces.WIPED);
  }

  @Test
  void aSetUpInWordsComesBackEqual() {
    Setup setup = accepted(request());
    assertThat(CanonicalText.setup(CanonicalText.of(setup))).isEqualTo(setup);
    Setup again = accepted(CanonicalText.request(setup, UnitSystem.METRIC));
    assertThat(again.hold().effort()).isEqualTo(HandleEffort.FIRM);
    assertThat(again.hold().handleTorqueNm().high())
        .isCloseTo(setup.hold().handleTorqueNm().high(), within(1e-9));
    assertThat(again.cutter().name()).isEqualTo(setup.cutter().name());
  }

  @Test
  void whatWasAssumedIsListedWithItsNumbers() {
    List<String> taken = SpokenAccount.taken(accepted(request()));
    assertThat(taken).hasSize(5);
    assertThat(taken.get(0))
        .startsWith("/stock/material: mild steel (typical)")
        .contains("specificCuttingForce 1350 to 1990 MPa");
    assertThat(taken.get(1)).startsWith("/hold/vise: 6 inch vise").contains("jawHeight 44 mm");
    assertThat(taken.get(2)).startsWith("/machine: knee mill").contains("backlash 0.3 mm");
    assertThat(taken.get(3)).startsWith("/cutter: 63 mm face mill").contains("teeth 5");
    assertThat(taken.get(4)).startsWith("/hold/clamping: firm").contains("N.m on the screw");
  }

  @Test
  void nothingIsAssumedOfWhatCameFromTheCatalogue() {
    assertThat(SpokenAccount.taken(Seeds.accepted(Seeds.request("01")))).isEmpty();
  }

  static Stream<JsonNode> materials() {
    return rows("materials", "materials");
  }

  private static Stream<JsonNode> rows(String file, String list) {
    List<JsonNode> rows = new ArrayList<>();
    file(file).path(list).forEach(rows::add);
    return rows.stream();
  }

  private static JsonNode file(String name) {
    try {
      return RequestText.yaml(
          Files.readString(Path.of("src/main/resources/spoken/" + name + ".yaml")));
    } catch (IOException | RequestText.Malformed e) {
      throw new AssertionError(e);
    }
  }

  @ParameterizedTest
  @MethodSource("materials")
  void aMaterialByWordsSpansEveryGradeThatTheWordsCover(JsonNode row) {
    for (JsonNode word : row.path("words")) {
      Material spoken = SpokenShop.MATERIALS.item(word.stringValue());
      assertThat(spoken).isNotNull();
      for (JsonNode name : row.path("grades")) {
        Material grade = Seeds.CATALOGUE.materials().get(name.stringValue());
        assertThat(spoken.group()).isEqualTo(grade.group());
        spans(spoken.specificCuttingForcePa(), grade.specificCuttingForcePa());
        spans(spoken.chipExponent(), grade.chipExponent());
        spans(spoken.youngsModulusPa(), grade.youngsModulusPa());
        spans(spoken.yieldPa(), grade.yieldPa());
        assertThat(spoken.densityKgPerM3()).isCloseTo(grade.densityKgPerM3(), within(200.0));
        bears(spoken.hss(), grade.hss());
        bears(spoken.carbide(), grade.carbide());
      }
    }
  }

  private static void spans(Band wide, Band narrow) {
    assertThat(wide.low()).isLessThanOrEqualTo(narrow.low() * (1 + 1e-12));
    assertThat(wide.high()).isGreaterThanOrEqualTo(narrow.high() * (1 - 1e-12));
  }

  private static void bears(CuttingRange spoken, CuttingRange grade) {
    assertThat(spoken.greatestSpeedMPerS())
        .isLessThanOrEqualTo(grade.greatestSpeedMPerS() * (1 + 1e-12));
    assertThat(spoken.greatestFeedPerToothM())
        .isLessThanOrEqualTo(grade.greatestFeedPerToothM() * (1 + 1e-12));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mild steel",
        "Mild Steel",
        "aluminium plate",
        "aluminum plate",
        "cold rolled",
        "bright bar",
        "stainless",
        "tool steel",
        "cast iron",
        "brass",
      })
  void theWordsOfTheShopAreUnderstood(String words) {
    ObjectNode request = request();
    Seeds.object(request, "stock").put("material", words);
    assertThat(accepted(request).stock().material().name()).isEqualTo(words + " (typical)");
  }

  @ParameterizedTest
  @CsvSource({
    "6 inch vise, 152.4",
    "six inch vise, 152.4",
    "6\" vise, 152.4",
    "6-inch milling vise, 152.4",
    "150 mm vise, 150",
    "150mm vice, 150",
    "4 in machine vise, 101.6",
    "vise 125 mm, 125",
  })
  void aViseIsKnownByItsSize(String words, double jawMm) {
    Vise vise = SpokenShop.VISES.item(words);
    assertThat(vise).isNotNull();
    assertThat(1000 * vise.jawWidthM()).isCloseTo(jawMm, within(1e-9));
  }

  /** A larger vise of a kind is higher, opens wider and bears more. */
  @Test
  void betweenTwoSizesAViseLiesBetween() {
    Vise last = SpokenShop.VISES.item("75 mm vise");
    for (int mm = 80; mm <= 200; mm += 5) {
      Vise vise = SpokenShop.VISES.item(mm + " mm vise");
      assertThat(vise.jawHeightM()).isGreaterThan(last.jawHeightM());
      assertThat(vise.greatestClampingForceN()).isGreaterThan(last.greatestClampingForceN());
      assertThat(vise.greatestOpeningM()).isGreaterThan(last.greatestOpeningM());
      last = vise;
    }
  }

  @ParameterizedTest
  @CsvSource({
    "'2 inch face mill, carbide', FACE_MILL, CARBIDE, 50.8, 4",
    "63 mm face mill, FACE_MILL, CARBIDE, 63, 5",
    "'1/2 inch end mill, HSS', END_MILL, HSS, 12.7, 4",
    "'1/2 in carbide end mill', END_MILL, CARBIDE, 12.7, 4",
    "'3/4\" 2 flute end mill', END_MILL, HSS, 19.05, 2",
    "'1 1/4 inch end mill', END_MILL, HSS, 31.75, 4",
    "16 mm solid carbide end mill 3 flute, END_MILL, CARBIDE, 16, 3",
    "50 mm indexable shoulder mill, FACE_MILL, CARBIDE, 50, 4",
    "40 mm shell mill, SHELL_MILL, HSS, 40, 6",
    "60 mm fly cutter, FACE_MILL, HSS, 60, 1",
  })
  void aCutterIsKnownByKindAndDiameter(
      String words, CutterKind kind, ToolMaterial tool, double mm, int teeth) {
    Cutter cutter = SpokenShop.CUTTERS.item(words);
    assertThat(cutter).isNotNull();
    assertThat(cutter.kind()).isEqualTo(kind);
    assertThat(cutter.toolMaterial()).isEqualTo(tool);
    assertThat(1000 * cutter.diameterM()).isCloseTo(mm, within(1e-9));
    assertThat(cutter.teeth()).isEqualTo(teeth);
    assertThat(cutter.edge()).isNull();
    assertThat(cutter.runOutM()).isNull();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "vise",
        "6 vise",
        "inch vise",
        "900 mm vise",
        "6 inch chuck",
        "1/0 inch vise",
        "6 inch vise 150 mm",
      })
  void aViseThatIsNoViseIsNotUnderstood(String words) {
    assertThat(SpokenShop.VISES.item(words)).isNull();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "end mill",
        "12 mm drill",
        "500 mm end mill",
        "12 mm hss carbide end mill",
        "0 mm end mill",
      })
  void aCutterThatIsNoCutterIsNotUnderstood(String words) {
    assertThat(SpokenShop.CUTTERS.item(words)).isNull();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "knee mill",
        "manual mill",
        "bench mill",
        "machining center",
        "machining centre",
        "VMC",
        "CNC mill",
        "bed mill",
      })
  void aMachineIsKnownByItsKind(String words) {
    assertThat(SpokenShop.MACHINES.item(words)).isNotNull();
  }

  /** Every size between the ends of the rows is a cutter, with its flutes inside its stick-out. */
  @Test
  void everySizeOfEveryKindReads() {
    for (String kind : List.of("face mill", "shoulder mill", "shell mill", "end mill")) {
      for (int mm = 3; mm <= 125; mm++) {
        Cutter cutter = SpokenShop.CUTTERS.item(mm + " mm " + kind);
        if (cutter != null) {
          assertThat(cutter.fluteLengthM()).isLessThanOrEqualTo(cutter.stickOutM());
          assertThat(cutter.stickOutM()).isLessThan(cutter.overhangM());
          assertThat(cutter.greatestDepthM()).isLessThanOrEqualTo(cutter.fluteLengthM());
        }
      }
    }
  }

  @Test
  void theCatalogueComesBeforeTheWords() {
    ObjectNode request = Seeds.request("02");
    assertThat(Seeds.accepted(request).machine().name()).isEqualTo("machining center");
    request.put("machine", "machining centre");
    assertThat(Seeds.accepted(request).machine().name()).isEqualTo("machining centre (typical)");
  }

  @Test
  void whatIsKnownOfAThingStandsInPlaceOfWhatIsTypical() {
    ObjectNode request = request();
    hold(request).putObject("vise").put("name", "6 inch vise").put("jawHeight", 50);
    Vise vise = accepted(request).hold().vise();
    assertThat(vise.jawHeightM()).isEqualTo(0.05);
    assertThat(vise.jawWidthM()).isCloseTo(0.1524, within(1e-12));
    assertThat(vise.name()).isEqualTo("6 inch vise (typical)");
  }

  @Test
  void whatIsDescribedInFullIsNotTypicalWhateverItsName() {
    ObjectNode request = request();
    ObjectNode own =
        (ObjectNode)
            CatalogueShelf.VISES
                .items(Seeds.CATALOGUE, UnitSystem.METRIC)
                .get("soft-cap vise 125")
                .deepCopy();
    hold(request).set("vise", own.put("name", "6 inch vise"));
    Vise vise = accepted(request).hold().vise();
    assertThat(vise.name()).isEqualTo("6 inch vise");
    assertThat(vise.jawWidthM()).isEqualTo(0.125);
  }

  @ParameterizedTest
  @CsvSource({
    "/stock, material, milld steel, mild steel",
    "/stock, material, stainles, stainless",
    "/hold, vise, 6 inch vize, 6 inch vise",
    "'', machine, nee mill, knee mill",
    "'', cutter, '2 inch fase mill, carbide', '2 inch face mill, carbide'",
  })
  void aWordThatIsNotThereOffersTheNearest(String at, String name, String said, String offered) {
    ObjectNode request = request();
    ((ObjectNode) request.at(at)).put(name, said);
    assertThat(problem(request).hint()).startsWith("did you mean ").contains("\"" + offered + "\"");
  }

  @Test
  void aGradeThatIsNotThereOffersTheNearestGrades() {
    ObjectNode request = Seeds.request("01");
    Seeds.object(request, "stock").put("material", "1019 cold drawn");
    assertThat(Seeds.problems(request).get(0).hint())
        .contains("\"1018 cold drawn\"")
        .contains("\"1020 cold drawn\"")
        .contains(" or ");
  }

  /** Hand force times length of the handle, at each end. */
  @Test
  void aPullInWordsIsATorqueByTheLengthOfTheHandle() {
    ObjectNode request = request();
    hold(request).put("clamping", "firm").put("handleLength", 250);
    Band torque = accepted(request).hold().handleTorqueNm();
    assertThat(torque.low()).isCloseTo(100 * 0.25, within(1e-9));
    assertThat(torque.high()).isCloseTo(280 * 0.25, within(1e-9));
    hold(request).remove("handleLength");
    spans(accepted(request).hold().handleTorqueNm(), torque);
  }

  /** No word passes what the strongest leave on a wrench: 590 N m, Ferguson and Mason 1988. */
  @ParameterizedTest
  @EnumSource(HandleEffort.class)
  void aHarderWordIsAHarderPull(HandleEffort effort) {
    Band torque = SpokenShop.torqueNm(effort, null);
    assertThat(torque.high()).isLessThan(590);
    if (effort.ordinal() > 0) {
      Band softer = SpokenShop.torqueNm(HandleEffort.values()[effort.ordinal() - 1], null);
      assertThat(torque.low()).isGreaterThan(softer.low());
      assertThat(torque.likely()).isGreaterThan(softer.likely());
      assertThat(torque.high()).isGreaterThan(softer.high());
    }
  }

  @Test
  void aTorqueThatWasMeasuredStandsInPlaceOfTheWord() {
    ObjectNode request = request();
    hold(request).put("handleTorque", 60);
    assertThat(accepted(request).hold().handleTorqueNm()).isEqualTo(Band.exactly(60));
  }

  @Test
  void wordsAreDroppedWhenTheTorqueBecomesAnother() {
    Hold firm = accepted(request()).hold();
    assertThat(firm.but().held()).isEqualTo(firm);
    assertThat(firm.but().clamping(null, Band.exactly(90), null).held().effort()).isNull();
  }

  @Test
  void aForceBesideAPullInWordsIsAProblem() {
    ObjectNode request = request();
    hold(request).put("clampingForce", 20000);
    assertThat(problem(request).pointer()).isEqualTo("/hold/clamping");
  }

  @Test
  void aHandleWithoutAPullIsAProblem() {
    ObjectNode request = request();
    hold(request).remove("clamping");
    hold(request).put("handleLength", 250);
    assertThat(problem(request).pointer()).isEqualTo("/hold/handleLength");
  }

  @Test
  void aQuickerHandFeedsMoreATooth() {
    Band last = Band.exactly(0);
    for (HandFeedPace pace : HandFeedPace.values()) {
      ObjectNode request = request();
      Seeds.object(request, "cut").put("handFeed", pace.words());
      Band feed = accepted(request).cut().feedPerToothM();
      assertThat(feed.likely()).isGreaterThan(last.likely());
      last = feed;
    }
  }

  /** 30 mm/min at 5 teeth and 120 m/min on 63 mm: v_f / (z n). */
  @Test
  void aHandFeedIsTheTableFeedOverTeethAndTurns() {
    Setup setup = accepted(request());
    double turnsPerMinute = 120_000 / (Math.PI * 63);
    assertThat(1000 * setup.cut().feedPerToothM().likely())
        .isCloseTo(30 / (5 * turnsPerMinute), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"feedPerTooth, 0.05", "tableFeed, 100"})
  void aHandFeedBesideAFeedIsAProblem(String field, double value) {
    ObjectNode request = request();
    Seeds.object(request, "cut").put(field, value);
    assertThat(problem(request).pointer()).isEqualTo("/cut/handFeed");
  }

  @Test
  void aHandFeedByPowerIsAProblem() {
    ObjectNode request = request();
    Seeds.object(request, "cut").put("feedDrive", "power");
    assertThat(problem(request).pointer()).isEqualTo("/cut/handFeed");
  }
}
