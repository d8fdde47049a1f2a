package org.standproud.mechanics.engagement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Mode;
import org.standproud.setup.Spin;

/**
 * Formulas: Altintas, Manufacturing Automation, 2nd ed. 2012, ch. 2 and Martellotti, Trans. ASME
 * 1941 (both from memory). The rows are derived from those formulas.
 */
class EngagementTest {

  private static final PublishedTable BOOK =
      new PublishedTable(
          Subject.ENGAGEMENT,
          "Altintas, Manufacturing Automation, 2nd ed. 2012, ch. 2 (formulas from memory)",
          SourceTag.DERIVED);

  private static final PublishedTable SHORTCUT =
      new PublishedTable(
          Subject.ENGAGEMENT,
          "h_m/f_z of Altintas 2012 ch. 2 beside the shortcut sqrt(a_e/D)",
          SourceTag.DERIVED);

  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0}: D {1} mm, y {2} to {3} mm [derived from Altintas 2012 ch. 2]")
  @CsvSource({
    "slot,                20, -15,  15, 4, 0.05, 90,   0,       180,      2.0000, 0.031831, 0.05",
    "up ae=2,             20,   8,  50, 4, 0.05, 90,   0,        36.8699, 0.4097, 0.015540, 0.03",
    "down ae=2,           20, -50,  -8, 4, 0.05, 90, 143.1301,  180,      0.4097, 0.015540, 0.03",
    "up ae=4,             16,   4,  50, 3, 0.06, 90,   0,        60,      0.5,    0.028648, 0.051962",
    "up ae=25,            50,   0,  60, 5, 0.10, 90,   0,        90,      1.25,   0.063662, 0.10",
    "down ae=40,          50, -60,  15, 5, 0.10, 90,  53.1301,  180,      1.7621, 0.072258, 0.10",
    "centred w=60,        80, -30,  30, 6, 0.15, 45,  41.4096,  138.5904, 1.6197, 0.093802, 0.106066",
    "centred thin plate,  63,  -5,   5, 5, 0.12, 45,  80.8668,   99.1332, 0.2537, 0.084494, 0.084853",
    "centred w=12,        50,  -6,   6, 4, 0.10, 90,  76.1135,  103.8865, 0.3086, 0.099024, 0.10",
    "w=60 centre y=+5,    80, -25,  35, 6, 0.15, 45,  28.9550,  128.6822, 1.6621, 0.091406, 0.106066",
    "w=60 centre y=-5,    80, -35,  25, 6, 0.15, 45,  51.3178,  151.0450, 1.6621, 0.091406, 0.106066",
    "w=70 centre y=+12,  100, -23,  47, 7, 0.20, 75,  19.9484,  117.3871, 1.8946, 0.159035, 0.193185",
    "w=10 centre y=+15,   50,  10,  20, 4, 0.10, 90,  36.8699,   66.4218, 0.3284, 0.077553, 0.091652",
    "w=10 centre y=-15,   50, -20, -10, 4, 0.10, 90, 113.5782,  143.1301, 0.3284, 0.077553, 0.091652",
  })
  void theArcTheChipAndTheTeethInCutAreThoseOfTheBook(
      String name,
      double d,
      double low,
      double high,
      int z,
      double fz,
      double kappa,
      double entryDeg,
      double exitDeg,
      double teethInCut,
      double meanMm,
      double greatestMm) {
    Engagement.Cutting cutting =
        PassFixture.pass(d, z, high - low, -(low + high) / 2, fz).shaped(kappa, 2, 0, 0).cutting();
    BOOK.row(name + ", D " + d + " mm, z " + z)
        .figure("phi_st", "deg", entryDeg, Math.toDegrees(cutting.arc().entryRad()), 6e-5)
        .figure("phi_ex", "deg", exitDeg, Math.toDegrees(cutting.arc().exitRad()), 6e-5)
        .figure("teeth in cut", "", teethInCut, cutting.teethInCut(), 6e-5)
        .figure("h_m", "mm", meanMm, cutting.meanChipM() * 1000, 6e-7)
        .figure("h_max", "mm", greatestMm, cutting.greatestChipM() * 1000, 6e-7);
  }

  /** Entry and exit chips printed beside the rows above [derived]. */
  @Tag(PublishedTable.TESTS)
  @Test
  void anOffsetFaceMillGoesFromThinToThickOnOneSideAndFromThickToThinOnTheOther() {
    PassFixture faceMill = PassFixture.pass(80, 6, 60, 0, 0.15).shaped(45, 2, 0, 0);
    BOOK.row("face mill D 80, w 60, centred")
        .figure("chip at entry", "mm", 0.070156, faceMill.cutting().entryChipM() * 1e3, 6e-7);
    assertThat(faceMill.cutting().arc().trend()).isEqualTo(ChipTrend.EVEN);
    Engagement.Cutting stockTowardFixed = faceMill.at(-5).cutting();
    BOOK.row("face mill D 80, w 60, centre of the stock at y +5")
        .figure("chip at entry", "mm", 0.051349, stockTowardFixed.entryChipM() * 1e3, 6e-7)
        .figure("chip at exit", "mm", 0.082798, stockTowardFixed.exitChipM() * 1e3, 6e-7);
    assertThat(stockTowardFixed.arc().trend()).isEqualTo(ChipTrend.THIN_TO_THICK);
    Engagement.Cutting stockTowardMovable = faceMill.at(5).cutting();
    assertThat(stockTowardMovable.arc().trend()).isEqualTo(ChipTrend.THICK_TO_THIN);
  }

  /** 1 / (2 sqrt(r (1 - r))), r = ae/D [derived from h_max of the book]. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "ae/D {0}: chip thinning {1} [derived]")
  @CsvSource({
    "0.01,5.02519",
    "0.02,3.57143",
    "0.05,2.29416",
    "0.10,1.66667",
    "0.15,1.40028",
    "0.20,1.25",
    "0.25,1.15470",
    "0.30,1.09109",
    "0.40,1.02062",
    "0.50,1",
    "0.75,1"
  })
  void aShallowSideCutThinsTheChip(double share, double factor) {
    Engagement.Cutting cutting = PassFixture.conventional(20, 4, 20 * share, 0.1).cutting();
    BOOK.row("side cut, a_e/D " + share)
        .figure("f_z/h_max", "", factor, 0.1e-3 / cutting.greatestChipM(), 6e-6);
  }

  /** h_m/f_z exact against the shortcut sqrt(ae/D) [derived; the shortcut as found in print]. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "ae/D {0}: hm/fz {1}, shortcut {2} [derived]")
  @CsvSource({
    "0.02,0.14095,0.14142",
    "0.05,0.22172,0.22361",
    "0.1,0.31080,0.31623",
    "0.2,0.43136,0.44721",
    "0.3,0.51756,0.54772",
    "0.5,0.63662,0.70711"
  })
  void theMeanChipLiesJustBelowItsShortcut(double share, double exact, double shortcut) {
    Engagement.Cutting cutting = PassFixture.conventional(20, 4, 20 * share, 0.1).cutting();
    double share0 = cutting.meanChipM() / 0.1e-3;
    SHORTCUT.row("side cut, a_e/D " + share).figure("h_m/f_z", "", exact, share0, 6e-6);
    assertThat(share0).isLessThan(shortcut);
  }

  /** sin 42 deg = 0.669 and 0.08/0.669 = 0.12 [found, technical page on entering angles]. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "entering angle {0} deg: factor {1} [derived]")
  @CsvSource({
    "90,1",
    "75,0.96593",
    "60,0.86603",
    "45,0.70711",
    "42,0.66913",
    "30,0.5",
    "15,0.25882",
    "10,0.17365"
  })
  void aSlantedEdgeThinsTheChipBySineOfItsAngle(double kappa, double sine) {
    EdgeInCut edge = EdgeInCut.of(0.002, Math.toRadians(kappa), 0);
    BOOK.row("entering angle " + kappa + " deg").figure("sin kappa", "", sine, edge.sine(), 6e-6);
    assertThat(edge.lengthM() * edge.sine()).isCloseTo(0.002, within(1e-12));
  }

  private static final PublishedTable PAGE =
      new PublishedTable(Subject.ENGAGEMENT, "technical page on entering angles", SourceTag.FOUND);

  /** The page prints .669 and 0.08/.669 = 0.12 mm [found]. */
  @Tag(PublishedTable.TESTS)
  @Test
  void anEdgeAtFortyTwoDegreesTakesHalfAsMuchFeedAgain() {
    double sine = EdgeInCut.of(0.002, Math.toRadians(42), 0).sine();
    PAGE.row("entering angle 42 deg")
        .figure("sin kappa", "", .669, sine, 5e-4)
        .figure("f_z for a chip of 0.08", "mm", .12, .08 / sine, 5e-4);
  }

  @Test
  void aShallowCutOnACornerRadiusActsLikeASlantedEdge() {
    EdgeInCut deep = EdgeInCut.of(0.02, Math.PI / 2, 0.001);
    EdgeInCut onTheArc = EdgeInCut.of(0.0002, Math.PI / 2, 0.001);
    assertThat(deep.sine()).isGreaterThan(0.96);
    // b = r acos(1 - ap/r) = 0.6435 mm for r 1 and ap 0.2 mm
    assertThat(onTheArc.lengthM()).isCloseTo(0.00064350, within(1e-8));
    assertThat(onTheArc.sine()).isCloseTo(0.2 / 0.64350, within(1e-4));
    assertThat(EdgeInCut.of(0.001, Math.PI / 2, 0.001).lengthM())
        .isCloseTo(Math.PI / 2 * 0.001, within(1e-9));
  }

  @ParameterizedTest
  @EnumSource(Spin.class)
  void aSideCutIsConventionalOneWayAndClimbTheOther(Spin spin) {
    PassFixture stockOnFixedSide = PassFixture.conventional(20, 4, 3, 0.05);
    boolean clockwise = spin == Spin.CLOCKWISE;
    assertThat(stockOnFixedSide.turning(spin, FeedDirection.PLUS_X).cutting().mode())
        .isEqualTo(clockwise ? Mode.CONVENTIONAL : Mode.CLIMB);
    assertThat(stockOnFixedSide.turning(spin, FeedDirection.MINUS_X).cutting().mode())
        .isEqualTo(clockwise ? Mode.CLIMB : Mode.CONVENTIONAL);
    assertThat(
            PassFixture.pass(80, 6, 60, 3, 0.1)
                .turning(spin, FeedDirection.PLUS_X)
                .cutting()
                .mode())
        .isEqualTo(Mode.BOTH);
  }

  @Test
  void aCutterBesideTheStockMissesItAndSaysByHowMuch() {
    PassFixture beside = PassFixture.pass(50, 4, 10, 42, 0.1);
    Engagement engagement = Engagement.of(beside.stock(), beside.cutter(), beside.cut());
    assertThat(engagement).isInstanceOf(Engagement.Missed.class);
    assertThat(((Engagement.Missed) engagement).gapM()).isCloseTo(0.012, within(1e-12));
  }

  @Test
  void theOverhangIsCountedOnEachSideOfTheStock() {
    Engagement.Cutting cutting = PassFixture.pass(63, 5, 10, 8, 0.1).cutting();
    assertThat(cutting.overhangFixedSideM()).isCloseTo(0.0345, within(1e-12));
    assertThat(cutting.overhangMovableSideM()).isCloseTo(0.0185, within(1e-12));
    assertThat(cutting.coversStock()).isTrue();
    assertThat(cutting.engagedWidthM()).isCloseTo(0.010, within(1e-12));
    assertThat(PassFixture.pass(63, 5, 80, 0, 0.1).cutting().coversStock()).isFalse();
  }

  @Test
  void aCutterNarrowerThanTheStockIsASlot() {
    Arc arc = PassFixture.pass(20, 4, 40, 3, 0.05).cutting().arc();
    assertThat(arc.entryRad()).isZero();
    assertThat(arc.exitRad()).isEqualTo(Math.PI);
  }

  /**
   * By hand: D 80, stock 60 wide and 200 long, centred. With the end of the stock 36 mm ahead of
   * the axis the circle meets it at asin(36/40) = 64.158 deg and at 115.842 deg; with 36 mm left
   * ahead of the axis only the strips from 41.410 to 64.158 deg and from 115.842 to 138.590 deg are
   * cut.
   */
  @Test
  void theCutterLeavesOverTheEndWithAStripOnEachSide() {
    PassGeometry geometry = PassFixture.pass(80, 6, 60, 0, 0.15).cutting().geometry();
    List<Arc> entering = geometry.arcsAt(-0.036);
    assertThat(entering).hasSize(1);
    assertThat(Math.toDegrees(entering.get(0).entryRad())).isCloseTo(64.158, within(1e-3));
    assertThat(Math.toDegrees(entering.get(0).exitRad())).isCloseTo(115.842, within(1e-3));
    List<Arc> leaving = geometry.arcsAt(0.200 - 0.036);
    assertThat(leaving).hasSize(2);
    assertThat(Math.toDegrees(leaving.get(0).exitRad())).isCloseTo(64.158, within(1e-3));
    assertThat(Math.toDegrees(leaving.get(1).entryRad())).isCloseTo(115.842, within(1e-3));
    assertThat(geometry.arcsAt(0.1)).containsExactly(geometry.steadyArc().orElseThrow());
    assertThat(geometry.arcsAt(-0.041)).isEmpty();
    assertThat(geometry.arcsAt(0.201)).isEmpty();
  }

  @Property
  void theArcsAlongThePassAreThoseWhereTheToothStandsInTheStock(
      @ForAll @DoubleRange(min = 5, max = 120) double d,
      @ForAll @DoubleRange(min = 2, max = 100) double w,
      @ForAll @DoubleRange(min = 3, max = 150) double length,
      @ForAll @DoubleRange(min = -80, max = 80) double y,
      @ForAll @DoubleRange(min = -100, max = 250) double travel,
      @ForAll @DoubleRange(min = 0, max = 3.14) double phi) {
    PassFixture pass = PassFixture.pass(d, 4, w, y, 0.05).ofLength(length);
    PassGeometry geometry = PassGeometry.of(pass.stock(), pass.cutter(), pass.cut());
    double toothX = travel + d / 2 * Math.sin(phi);
    double toothY = y + d / 2 * Math.cos(phi);
    double clear =
        Math.min(
            Math.min(Math.abs(toothX), Math.abs(toothX - length)),
            Math.abs(Math.abs(toothY) - w / 2));
    Assume.that(clear > 1e-6);
    boolean inStock = toothX > 0 && toothX < length && Math.abs(toothY) < w / 2;
    boolean inArc = geometry.arcsAt(travel / 1000).stream().anyMatch(a -> a.holds(phi));
    assertThat(inArc).isEqualTo(inStock);
  }

  @Property
  void theChipNeverExceedsTheFeedAndItsMeanNeverItsPeak(
      @ForAll @DoubleRange(min = 5, max = 150) double d,
      @ForAll @DoubleRange(min = 1, max = 100) double w,
      @ForAll @DoubleRange(min = -1, max = 1) double place,
      @ForAll @DoubleRange(min = 0.02, max = 0.3) double fz,
      @ForAll @DoubleRange(min = 10, max = 90) double kappa) {
    PassFixture pass = PassFixture.pass(d, 4, w, 0.49 * place * (d + w), fz).shaped(kappa, 2, 0, 0);
    Engagement.Cutting cutting = pass.cutting();
    assertThat(cutting.meanChipM()).isLessThanOrEqualTo(cutting.greatestChipM() * (1 + 1e-12));
    assertThat(cutting.greatestChipM()).isLessThanOrEqualTo(fz / 1000 * (1 + 1e-12));
    // h_m phi_s = f_z sin(kappa) 2 ae/D for any position of the work
    assertThat(cutting.meanChipM() * cutting.arc().spanRad())
        .isCloseTo(
            fz / 1000 * Math.sin(Math.toRadians(kappa)) * 2 * cutting.engagedWidthM() / d * 1000,
            within(1e-12));
  }

  @Property
  void mirroringThePassSwapsEntryAndExitAndNothingElse(
      @ForAll @DoubleRange(min = 5, max = 150) double d,
      @ForAll @DoubleRange(min = 1, max = 100) double w,
      @ForAll @DoubleRange(min = -1, max = 1) double place) {
    PassFixture pass = PassFixture.pass(d, 4, w, 0.49 * place * (d + w), 0.1);
    Arc arc = pass.cutting().arc();
    Arc mirrored = pass.at(-pass.offsetMm()).cutting().arc();
    assertThat(mirrored.entryRad()).isCloseTo(Math.PI - arc.exitRad(), within(1e-9));
    assertThat(mirrored.exitRad()).isCloseTo(Math.PI - arc.entryRad(), within(1e-9));
    assertThat(mirrored.meanSine()).isCloseTo(arc.meanSine(), within(1e-9));
  }

  @Test
  void sizesNoMillTakesAreRefusedByName() {
    assertThatThrownBy(() -> PassFixture.pass(0.5, 4, 10, 0, 0.1).cutting())
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("cutter radius");
    assertThatThrownBy(() -> PassFixture.pass(50, 4, 10, Double.NaN, 0.1).cutting())
        .isInstanceOf(OutsideValidity.class);
  }
}
