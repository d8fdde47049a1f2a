package org.standproud.mechanics.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.setup.Band;
import org.standproud.setup.Clamp;
import org.standproud.setup.Cutter;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Machine;
import org.standproud.setup.MachineBuilder;
import org.standproud.setup.Operation;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;
import org.standproud.setup.Stop;
import org.standproud.setup.ToolMaterial;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;

/** Own geometry: every number here is added up by hand from the sizes of the small shop. */
class ReachTest {

  private static final Cutter END_MILL =
      SmallShop.endMill(ToolMaterial.CARBIDE, .016, .016, .032, .050);

  private static final PublishedTable BY_HAND =
      new PublishedTable(
          Subject.REACH,
          "sizes of a small shop in mm, added up by hand (own geometry)",
          SourceTag.DERIVED);

  private static void millimetres(String sizes, String what, double byHandMm, double computedM) {
    BY_HAND.row(sizes).figure(what, "mm", byHandMm, computedM * 1e3, 1e-6);
  }

  private static Setup broadSide(Cutter cutter, double axialDepthM, double offsetM) {
    return SmallShop.plate(
        cutter, SmallShop.pass(Operation.BROAD_SIDE, axialDepthM, offsetM, FeedDirection.PLUS_X));
  }

  private static Setup topEdge(double axialDepthM) {
    return SmallShop.plate(
        SmallShop.faceMill(),
        SmallShop.pass(Operation.TOP_EDGE, axialDepthM, 0, FeedDirection.PLUS_X));
  }

  private static double margin(Setup setup, Body moving, Body standing) {
    return Reach.of(setup).clearances().stream()
        .filter(c -> c.moving() == moving && c.standing() == standing)
        .findFirst()
        .orElseThrow()
        .marginM();
  }

  /** 450 nose to table less 60 bed, 40 jaw, 60 stick-out and 90 overhang leaves 200 mm. */
  @Tag(PublishedTable.TESTS)
  @Test
  void daylightIsWhatIsLeftUnderTheNoseAfterViseStockAndCutter() {
    Reach reach = Reach.of(topEdge(.001));
    millimetres(
        "nose 450, bed 60, jaw 40, stick-out 60, overhang 90", "daylight", 200, reach.daylightM());
    millimetres("the same and 1 deep, spindle as low as 0", "downward", 249, reach.downwardM());
    millimetres("jaw 40, grip 20", "parallels", 20, reach.parallelsHeightM());
    millimetres("opening 200, stock 10", "opening left", 190, reach.openingM());
    millimetres("saddle 300, axis in the middle", "travel y left", 150, reach.travelYM());
  }

  /** 700 travel less 60 lead-in, 120 stock and 31.5 run-out leaves 488.5 mm. */
  @Tag(PublishedTable.TESTS)
  @Test
  void theTableTravelsLeadInStockAndHalfTheCutter() {
    millimetres(
        "table 700, lead-in 60, stock 120, D 63",
        "travel x left",
        488.5,
        Reach.of(topEdge(.001)).travelXM());
  }

  /** Inserts of 6 mm at 1 mm depth keep the body 5 mm above the stock ahead. */
  @Tag(PublishedTable.TESTS)
  @Test
  void aFaceMillOverATallPlateTouchesNothing() {
    Reach reach = Reach.of(topEdge(.001));
    assertThat(reach.collisions()).isEmpty();
    assertThat(reach.closest().moving()).isEqualTo(Body.CUTTER_BODY);
    millimetres("inserts 6, depth 1", "body to stock", 5, reach.closest().marginM());
    millimetres(
        "stick-out 60, depth 1",
        "edges to fixed jaw",
        59,
        margin(topEdge(.001), Body.CUTTING_PART, Body.FIXED_JAW));
  }

  /** Broad side 40 mm deep with 32 mm of flutes: the shank rubs on 8 mm of stock, 1 mm in. */
  @Tag(PublishedTable.TESTS)
  @Test
  void aBroadSideDeeperThanTheFlutesRubsOnTheShank() {
    Setup deep = broadSide(END_MILL, .040, -.012);
    millimetres(
        "D 16 on the axis at y -12, stock 10, depth 40, flutes 32",
        "shank to stock",
        -1,
        margin(deep, Body.SHANK, Body.STOCK));
    assertThat(Reach.of(deep).collisions())
        .extracting(Clearance::moving)
        .containsExactly(Body.SHANK);
    assertThat(Reach.of(broadSide(END_MILL, .032, -.012)).collisions()).isEmpty();
  }

  /** Stick-out of the cutter 50 mm: at 52 mm deep the wide holder stands 2 mm in the stock. */
  @Tag(PublishedTable.TESTS)
  @Test
  void aBroadSideDeeperThanTheCutterSticksOutRunsTheHolderIntoTheStock() {
    millimetres(
        "cutter out 50, depth 52",
        "holder to stock",
        -2,
        margin(broadSide(END_MILL, .052, -.012), Body.HOLDER, Body.STOCK));
    millimetres(
        "cutter out 50, depth 45",
        "holder to stock",
        5,
        margin(broadSide(END_MILL, .045, -.012), Body.HOLDER, Body.STOCK));
  }

  /** The stock stands 60 mm above the jaws: 61 mm deep cuts 1 mm into the movable jaw. */
  @Tag(PublishedTable.TESTS)
  @Test
  void aCutterBelowTheJawTopHitsTheJawOnItsSide() {
    Cutter longCutter = SmallShop.endMill(ToolMaterial.CARBIDE, .016, .016, .065, .080);
    Reach reach = Reach.of(broadSide(longCutter, .061, -.012));
    assertThat(reach.collisions())
        .extracting(Clearance::standing)
        .containsExactly(Body.MOVABLE_JAW);
    millimetres("stick-out 60, depth 61", "edges to movable jaw", -1, reach.closest().marginM());
    assertThat(Reach.of(broadSide(longCutter, .060, -.012)).collisions()).isEmpty();
  }

  /** Inserts of 6 mm: at 6 mm the body just meets the stock, at 8 mm it is 2 mm in it. */
  @Test
  void aDeepCutRunsTheBodyOfAFaceMillIntoTheStockAboveItsInserts() {
    assertThat(margin(topEdge(.006), Body.CUTTER_BODY, Body.STOCK)).isZero();
    assertThat(margin(topEdge(.008), Body.CUTTER_BODY, Body.STOCK)).isCloseTo(-.002, within(1e-9));
  }

  @Property
  void theOtherBroadSideMirrorsTheJaws(
      @ForAll @Scale(4) @DoubleRange(min = .001, max = .07) double depthM,
      @ForAll @Scale(4) @DoubleRange(min = .006, max = .02) double offsetM) {
    Setup movable = broadSide(END_MILL, depthM, -offsetM);
    Setup fixed = broadSide(END_MILL, depthM, offsetM);
    assertThat(margin(movable, Body.CUTTING_PART, Body.MOVABLE_JAW))
        .isCloseTo(margin(fixed, Body.CUTTING_PART, Body.FIXED_JAW), within(1e-9));
    assertThat(margin(movable, Body.HOLDER, Body.STOCK))
        .isCloseTo(margin(fixed, Body.HOLDER, Body.STOCK), within(1e-9));
  }

  @Property
  void goingDeeperNeverGivesMoreRoomToTheJaws(
      @ForAll @Scale(4) @DoubleRange(min = .001, max = .05) double depthM) {
    assertThat(
            margin(broadSide(END_MILL, depthM + .005, -.012), Body.CUTTING_PART, Body.MOVABLE_JAW))
        .isLessThanOrEqualTo(
            margin(broadSide(END_MILL, depthM, -.012), Body.CUTTING_PART, Body.MOVABLE_JAW));
  }

  @Property
  void everyMarginIsANumber(
      @ForAll @Scale(4) @DoubleRange(min = 0, max = .08) double depthM,
      @ForAll @Scale(4) @DoubleRange(min = -.1, max = .1) double offsetM,
      @ForAll @Scale(4) @DoubleRange(min = .003, max = .06) double diameterM,
      @ForAll @Scale(4) @DoubleRange(min = .003, max = .06) double fluteM) {
    Cutter cutter = SmallShop.endMill(ToolMaterial.HSS, diameterM, .016, fluteM, .06);
    Reach reach = Reach.of(broadSide(cutter, depthM, offsetM));
    assertThat(reach.clearances()).allMatch(c -> Double.isFinite(c.marginM()));
    assertThat(reach.closest().marginM()).isLessThanOrEqualTo(reach.clearances().get(0).marginM());
    assertThat(reach.collisions()).allMatch(c -> c.marginM() < 0);
  }

  /** Lead-in of 60 mm to the axis less a radius of 8 mm. */
  @Test
  void theCutterStartsOffTheStockWhicheverWayItIsFed() {
    Setup minus =
        SmallShop.plate(
            END_MILL, SmallShop.pass(Operation.TOP_EDGE, .001, 0, FeedDirection.MINUS_X));
    assertThat(Reach.of(minus).startM()).isCloseTo(.052, within(1e-12));
    assertThat(Reach.of(topEdge(.001)).startM()).isCloseTo(.060 - .0315, within(1e-12));
  }

  @Test
  void aDepthBelowNothingIsRefused() {
    assertThatThrownBy(() -> Reach.of(broadSide(END_MILL, -.001, -.012)))
        .isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> Reach.of(broadSide(END_MILL, Double.NaN, -.012)))
        .isInstanceOf(OutsideValidity.class);
  }

  private static SideView side(Cutter cutter, double axialDepthM) {
    return new SideView(stopped(broadSide(cutter, axialDepthM, -.012), Stop.BOTH));
  }

  private static Setup stopped(Setup setup, @Nullable Stop stop) {
    return held(setup, setup.hold().but().stop(stop).held());
  }

  private static Setup held(Setup setup, Hold hold) {
    return new Setup(
        setup.job(),
        setup.stock(),
        hold,
        setup.machine(),
        setup.cutter(),
        setup.cut(),
        setup.units());
  }

  /** Top at 60 mm, cutter 50 mm out of its holder: at 49 mm deep the holder stands at 61 mm. */
  @Test
  void seenFromTheSideAHolderClearsTheStockByAMillimetreOrTouchesIt() {
    assertThat(side(END_MILL, .049).toStockM(Body.HOLDER)).isCloseTo(.001, within(1e-9));
    assertThat(side(END_MILL, .050).toStockM(Body.HOLDER)).isZero();
    assertThat(side(END_MILL, .051).toStockM(Body.HOLDER)).isCloseTo(-.001, within(1e-9));
  }

  /**
   * Top at 60 mm, 4 mm deep: the edges pass at 56 mm, 1 mm over a stop of 55 mm, into one of 58.
   */
  @Test
  void aStopIsClearedByAMillimetreOrMilled() {
    SideView view = side(END_MILL, .004);
    assertThat(view.toStopM(.055)).isCloseTo(.001, within(1e-9));
    assertThat(view.toStopM(.056)).isZero();
    assertThat(view.toStopM(.058)).isCloseTo(-.002, within(1e-9));
  }

  /**
   * The height of the stop is not given: 4 mm into it at worst, 26 mm over half way, 56 at best.
   */
  @Test
  void theHeightOfAStopIsABandFromTheJawTopToTheTopOfTheStock() {
    Band room = Reach.of(stopped(broadSide(END_MILL, .004, -.012), Stop.PLUS_X)).stopClearanceM();
    assertThat(room).isNotNull();
    assertThat(room.low()).isCloseTo(-.004, within(1e-9));
    assertThat(room.likely()).isCloseTo(.026, within(1e-9));
    assertThat(room.high()).isCloseTo(.056, within(1e-9));
  }

  @Test
  void aStopThatIsNotMentionedMayBeThereAndOneThatIsDeniedIsNot() {
    Setup given = broadSide(END_MILL, .004, -.012);
    assertThat(Reach.of(stopped(given, Stop.NONE)).stopClearanceM()).isNull();
    assertThat(Reach.of(stopped(given, null)).stopClearanceM())
        .isEqualTo(Reach.of(stopped(given, Stop.BOTH)).stopClearanceM());
  }

  /** The stock ends at 60 mm and the cutter of 8 mm radius runs out to 68 mm and past a stop. */
  @Test
  void theRunOutCarriesTheCutterOverTheStopBeyondTheStockEitherWay() {
    for (FeedDirection feed : FeedDirection.values()) {
      Setup pass = SmallShop.plate(END_MILL, SmallShop.pass(Operation.TOP_EDGE, .004, 0, feed));
      for (Stop stop : List.of(Stop.PLUS_X, Stop.MINUS_X)) {
        assertThat(new SideView(stopped(pass, stop)).toStopM(.058)).isCloseTo(-.002, within(1e-9));
      }
    }
  }

  private static Setup stoppedAt(double heightM) {
    Setup given = broadSide(END_MILL, .004, -.012);
    return held(given, given.hold().but().stop(Stop.BOTH).stopHeight(heightM).held());
  }

  /** Edges at 56 mm: 1 mm over a stop given at 55 mm, 4 mm into one as high as the stock. */
  @Test
  void aStopWithAHeightIsNoBand() {
    assertThat(Reach.of(stoppedAt(.055)).stopClearanceM().low()).isCloseTo(.001, within(1e-9));
    assertThat(Reach.of(stoppedAt(.055)).stopClearanceM().isExact()).isTrue();
    assertThat(Reach.of(stoppedAt(.060)).stopClearanceM().high()).isCloseTo(-.004, within(1e-9));
  }

  @Test
  void everyHeightLiesInTheBandOfAStopWithoutOne() {
    Band unknown = Reach.of(stopped(broadSide(END_MILL, .004, -.012), Stop.BOTH)).stopClearanceM();
    for (double heightM = 0; heightM <= .060; heightM += .005) {
      double givenM = Reach.of(stoppedAt(heightM)).stopClearanceM().likely();
      assertThat(givenM).isBetween(unknown.low() - 1e-9, unknown.high() + 1e-9);
    }
  }

  private static @Nullable Double roomM(Clamp... clamps) {
    Setup given = broadSide(END_MILL, .004, -.012);
    return Reach.of(held(given, given.hold().but().clamps(List.of(clamps)).held()))
        .clampClearanceM();
  }

  private static Clamp clamp(JawSide side, double alongM, double gapM, double heightM) {
    return new Clamp(side, alongM, .030, gapM, heightM);
  }

  /** The edges pass at 56 mm: over a clamp of 55 mm by 1 mm, into one of 58 mm by 2 mm. */
  @Test
  void aClampOnTheMilledSideIsClearedByAMillimetreOrStruck() {
    assertThat(roomM(clamp(JawSide.MOVABLE, 0, 0, .055))).isCloseTo(.001, within(1e-9));
    assertThat(roomM(clamp(JawSide.MOVABLE, 0, 0, .058))).isCloseTo(-.002, within(1e-9));
    assertThat(roomM(clamp(JawSide.MOVABLE, 0, 0, .056))).isZero();
  }

  /** A clamp as far out along the jaws as never to be passed, and one beyond the cutter across. */
  @Test
  void aHighClampThatTheCutterNeverComesToIsNoHindrance() {
    assertThat(roomM(clamp(JawSide.MOVABLE, .500, 0, .058))).isGreaterThan(.300);
    assertThat(roomM(clamp(JawSide.MOVABLE, 0, .100, .058))).isGreaterThan(.050);
    assertThat(roomM(clamp(JawSide.FIXED, 0, .100, .058))).isGreaterThan(.100);
  }

  @Test
  void theWorstOfSeveralClampsCountsAndNoneGivenIsNotRoom() {
    Clamp low = clamp(JawSide.MOVABLE, 0, 0, .020);
    Clamp high = clamp(JawSide.MOVABLE, -.02, 0, .058);
    assertThat(roomM(low, high)).isEqualTo(roomM(high));
    assertThat(roomM()).isNull();
  }

  @Test
  void aClampWithoutADistanceIsTakenToTouchTheStock() {
    Clamp unknown = new Clamp(JawSide.MOVABLE, 0, .030, null, .058);
    assertThat(roomM(unknown)).isEqualTo(roomM(clamp(JawSide.MOVABLE, 0, 0, .058)));
  }

  /** The mirror image of cut and clamp about the middle of the stock has the same room. */
  @Test
  void theOtherSideOfTheStockMirrorsTheRoom() {
    Setup left = broadSide(END_MILL, .004, -.012);
    Setup right = broadSide(END_MILL, .004, .012);
    for (double gapM : List.of(0.0, .003, .012, .040)) {
      Clamp movable = clamp(JawSide.MOVABLE, .01, gapM, .058);
      Clamp fixed = clamp(JawSide.FIXED, .01, gapM, .058);
      Reach there = Reach.of(held(left, left.hold().but().clamps(List.of(movable)).held()));
      Reach here = Reach.of(held(right, right.hold().but().clamps(List.of(fixed)).held()));
      assertThat(here.clampClearanceM()).isCloseTo(there.clampClearanceM(), within(1e-12));
    }
  }

  /** By hand: flutes 32 of 50 mm out of a holder of 60 mm; no body between flutes and shank. */
  @Test
  void anEndMillIsEdgesShankAndHolder() {
    assertThat(CutterPart.of(END_MILL, .010))
        .extracting(CutterPart::body)
        .containsExactly(Body.CUTTING_PART, Body.SHANK, Body.HOLDER);
    CutterPart holder = CutterPart.of(END_MILL, .010).get(2);
    assertThat(holder.fromZ()).isCloseTo(.060, within(1e-12));
    assertThat(holder.toZ()).isCloseTo(.120, within(1e-12));
  }

  /**
   * Inserts at 45 deg that are 6 mm high make D 63 at their foot 63 + 2 x 6 = 75 mm at their top.
   */
  @Test
  void aFaceMillIsAsWideAsItsInsertsAtTheirTop() {
    CutterPart body = CutterPart.of(SmallShop.faceMill(), 0).get(1);
    assertThat(body.body()).isEqualTo(Body.CUTTER_BODY);
    assertThat(body.diameterM()).isCloseTo(.075, within(1e-9));
    assertThat(body.fromZ()).isEqualTo(.006);
    assertThat(body.toZ()).isEqualTo(.040);
  }

  private static Setup on(Setup setup, Machine machine) {
    return new Setup(
        setup.job(),
        setup.stock(),
        setup.hold(),
        machine,
        setup.cutter(),
        setup.cut(),
        setup.units());
  }

  private static Machine machine(
      double travelX, double travelY, double travelZ, double noseToTable, double quill) {
    Machine mill = SmallShop.kneeMill();
    return MachineBuilder.builder(mill)
        .travelXM(travelX)
        .travelYM(travelY)
        .travelZM(travelZ)
        .noseToTableM(noseToTable)
        .quillTravelM(quill)
        .build();
  }

  /** 700 nose to table, knee 400 and quill 120: never under 180; nose on top at 250, 1 deep. */
  @Test
  void aSpindleThatCannotComeLowEnoughHasLessWayDown() {
    Reach reach = Reach.of(on(topEdge(.001), machine(.7, .3, .4, .7, .12)));
    assertThat(reach.downwardM()).isCloseTo(.250 - .001 - .180, within(1e-9));
    assertThat(reach.daylightM()).isCloseTo(.700 - .250, within(1e-9));
  }

  /** Half of 300 mm less an axis 12 mm off the middle, whichever side. */
  @Test
  void anAxisOffTheMiddleTakesFromTheTravelOfTheSaddle() {
    assertThat(Reach.of(broadSide(END_MILL, .02, -.012)).travelYM()).isCloseTo(.138, within(1e-9));
    assertThat(Reach.of(broadSide(END_MILL, .02, .012)).travelYM()).isCloseTo(.138, within(1e-9));
  }

  private static Setup packed() {
    Setup setup =
        broadSide(SmallShop.endMill(ToolMaterial.CARBIDE, .016, .016, .065, .080), .061, .012);
    return held(
        setup,
        setup
            .hold()
            .but()
            .packing(
                List.of(
                    new Packing(
                        JawSide.MOVABLE, PackingKind.SHEET, PackingMaterial.COPPER, .003, .01),
                    new Packing(
                        JawSide.FIXED, PackingKind.SHEET, PackingMaterial.COPPER, .001, .01)))
            .held());
  }

  /** 200 less stock of 10 and packing of 3 and 1 mm leaves 186 mm. */
  @Test
  void packingOnBothSidesTakesFromTheOpening() {
    assertThat(Reach.of(packed()).openingM()).isCloseTo(.186, within(1e-9));
  }

  /** Edges from y 4 to 20 mm, 1 mm below the jaw top; the jaws stand at 5 + 1 and at -5 - 3 mm. */
  @Test
  void packingMovesTheJawsAwayFromTheStock() {
    assertThat(margin(packed(), Body.CUTTING_PART, Body.MOVABLE_JAW)).isCloseTo(.012, within(1e-9));
    assertThat(margin(packed(), Body.CUTTING_PART, Body.FIXED_JAW)).isCloseTo(-.001, within(1e-9));
  }

  /** 60 mm before the stock and 100 beside its face: hypot(60, 100) less 8 mm. */
  @Test
  void aCutterThatStartsBesideTheStockStandsOffAlongTheDiagonal() {
    assertThat(Reach.of(broadSide(END_MILL, .02, -.105)).startM())
        .isCloseTo(.1166190 - .008, within(1e-6));
  }

  /** The clamp of 20 mm stands 36 mm under the edges. */
  @Test
  void aLowClampIsPassedOver() {
    assertThat(roomM(clamp(JawSide.MOVABLE, 0, 0, .020))).isCloseTo(.036, within(1e-9));
  }

  /**
   * A clamp from x 485 mm on, 58 high. Fed toward +x the holder of R 20 runs out to 60 + 8 + 20 =
   * 88, with its foot at 106: hypot(397, 48) = 399.891; fed back it begins at 60 + 60 + 20 = 140:
   * hypot(345, 48) = 348.323.
   */
  @Test
  void theLeadInIsLongerThanTheRunOutAndLiesWhereTheFeedBegins() {
    for (FeedDirection feed : FeedDirection.values()) {
      Setup pass =
          SmallShop.plate(END_MILL, SmallShop.pass(Operation.BROAD_SIDE, .004, -.012, feed));
      Clamp far = clamp(JawSide.MOVABLE, .500, 0, .058);
      Clamp behind = clamp(JawSide.MOVABLE, -.500, 0, .058);
      boolean forward = feed == FeedDirection.PLUS_X;
      assertThat(
              Reach.of(held(pass, pass.hold().but().clamps(List.of(far)).held())).clampClearanceM())
          .isCloseTo(forward ? .399891 : .348323, within(1e-6));
      assertThat(
              Reach.of(held(pass, pass.hold().but().clamps(List.of(behind)).held()))
                  .clampClearanceM())
          .isCloseTo(forward ? .348323 : .399891, within(1e-6));
    }
  }

  private static void refused(Setup setup, String quantity) {
    assertThatThrownBy(() -> Reach.of(setup))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining(quantity);
  }

  @Test
  void aMachineOfNegativeOrEndlessSizeIsRefusedByName() {
    Setup pass = topEdge(.001);
    refused(on(pass, machine(.7, .3, .4, -.45, .12)), "nose to table");
    refused(on(pass, machine(11, .3, .4, .45, .12)), "travel along X");
    refused(on(pass, machine(.7, -.3, .4, .45, .12)), "travel along Y");
    refused(on(pass, machine(.7, .3, 11, .45, .12)), "travel along Z");
    refused(on(pass, machine(.7, .3, .4, .45, -.12)), "quill travel");
  }

  private static Setup gripped(double jawHeight, double opening, double bed, double gripM) {
    Vise vise = SmallShop.vise();
    Setup pass = topEdge(.001);
    Vise other =
        ViseBuilder.builder(vise)
            .jawHeightM(jawHeight)
            .greatestOpeningM(opening)
            .bedHeightM(bed)
            .build();
    return held(pass, Hold.in(other, gripM).stop(Stop.NONE).held());
  }

  @Test
  void aViseOfNegativeOrEndlessSizeIsRefusedByName() {
    assertThat(Reach.of(gripped(.04, .2, .06, .02)).openingM()).isPositive();
    refused(gripped(-.04, .2, .06, .02), "jaw height");
    refused(gripped(.04, 11, .06, .02), "opening of the vise");
    refused(gripped(.04, .2, -.06, .02), "bed height");
    refused(gripped(.04, .2, .06, -.02), "grip depth");
    refused(gripped(.04, .2, .06, .09), "stick-out of the stock");
    refused(broadSide(END_MILL, -.001, -.012), "axial depth");
    refused(broadSide(END_MILL, .001, -11), "offset of the cutter");
  }

  @Test
  void aStockOfNegativeThicknessIsRefusedByName() {
    Setup pass = topEdge(.001);
    Stock thin =
        StockBuilder.builder()
            .lengthM(.12)
            .thicknessM(-.01)
            .heightM(.08)
            .material(SmallShop.steel())
            .highSpotM(0.0)
            .deburred(true)
            .build();
    refused(
        new Setup(
            pass.job(), thin, pass.hold(), pass.machine(), pass.cutter(), pass.cut(), pass.units()),
        "stock thickness");
  }
}
