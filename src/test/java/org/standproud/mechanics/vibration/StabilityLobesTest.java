package org.standproud.mechanics.vibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;

/**
 * Limits of the depth of cut by Tlusty's and by Altintas and Budak's formulas. Angles from the
 * normal to the feed, a conventional side cut enters at 0, a climb cut leaves at 180 degrees.
 */
class StabilityLobesTest {

  private static final PublishedTable TLUSTY =
      new PublishedTable(
          Subject.VIBRATION,
          "Tlusty, b_lim = -1/(2 K_s Re G) (first row: inputs of a turning example of Altintas, read in academic scripts)",
          SourceTag.DERIVED);

  private static final PublishedTable ONE =
      new PublishedTable(
          Subject.VIBRATION,
          "one flexible direction, K_t 1500 MPa, K_r .3, N 4, 400 Hz, zeta .02, k 5e6 N/m",
          SourceTag.DERIVED);

  private static final PublishedTable BENCHMARK =
      new PublishedTable(
          Subject.VIBRATION,
          "zeroth-order limit of the benchmark of Insperger and Stepan (inputs from memory)",
          SourceTag.DERIVED);

  private static final PublishedTable TWO =
      new PublishedTable(
          Subject.VIBRATION,
          "zeroth-order limit with inputs of a textbook example for Al 7075 (read as data in an academic script)",
          SourceTag.DERIVED);

  private static final PublishedTable BUDAK =
      new PublishedTable(
          Subject.VIBRATION,
          "zeroth-order limit with inputs of Budak and Altintas 1998 (from memory)",
          SourceTag.DERIVED);

  private static final double[] SLOT = {0, 180};
  private static final double[] HALF_UP = {0, 90};
  private static final double[] HALF_DOWN = {90, 180};

  private static double[] arc(String name) {
    return switch (name) {
      case "slot" -> SLOT;
      case "half up" -> HALF_UP;
      case "half down" -> HALF_DOWN;
      case "quarter up" -> new double[] {0, 60};
      case "quarter down" -> new double[] {120, 180};
      case "twentieth down" -> new double[] {180 - Math.toDegrees(Math.acos(0.9)), 180};
      case "centred D63 w10" -> centred(10.0 / 63);
      case "centred D80 w60" -> centred(60.0 / 80);
      default -> throw new IllegalArgumentException(name);
    };
  }

  private static double[] centred(double widthOverDiameter) {
    double half = Math.toDegrees(Math.asin(widthOverDiameter));
    return new double[] {90 - half, 90 + half};
  }

  private static DirectionalFactors factors(String name, double radialRatio) {
    double[] arc = arc(name);
    return DirectionalFactors.of(
        Math.toRadians(arc[0]), Math.min(Math.PI, Math.toRadians(arc[1])), radialRatio);
  }

  /**
   * [derived from published inputs] Tlusty's b_lim; the first row has the inputs of Altintas'
   * turning example [found in academic scripts].
   */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "k {0} zeta {1} fn {2} Ks {3}: {4} mm at {5} Hz [derived]")
  @CsvSource({
    "2.26e8, .012, 250, 1000, 5.48909, 252.982, 20187.8 8664.3 5515.8 4045.7",
    "1e7, .03, 600, 750, .82400, 617.738, 49115 21123.6 13455.2",
    "2e7, .05, 400, 2000, 1.05000, 419.524, 33226 14321.6 9128.1",
    "8e6, .02, 500, 2200, .14836, 509.902, 40623 17451.2 11112.5"
  })
  void turningChattersAboveTlustysDepth(
      double k, double zeta, double fn, double ksMPa, double mm, double hz, String rpm) {
    List<DampedMode> mode = List.of(new DampedMode(fn, zeta, k));
    StabilityLobes lobes = StabilityLobes.turning(mode, ksMPa * 1e6, 1, 1, 1);
    TLUSTY
        .row("k " + k + ", zeta " + zeta + ", f_n " + fn + ", K_s " + ksMPa)
        .percent("b_lim", "mm", mm, lobes.leastDepthM() * 1e3, 0.02)
        .percent("f_c", "Hz", hz, lobes.chatterHz(), 0.05);
    assertThat(Response.of(mode, new double[] {hz}).re()[0])
        .isCloseTo(-1 / (4 * k * zeta * (1 + zeta)), Percentage.withPercentage(0.001));
    double[] speeds =
        Arrays.stream(rpm.split(" ")).mapToDouble(s -> Double.parseDouble(s) / 60).toArray();
    List<Lobe> curves = lobes.lobes(1, 2000, speeds.length);
    for (int i = 0; i < speeds.length; i++) {
      Lobe.Point lowest =
          curves.get(i).points().stream()
              .min((p, q) -> Double.compare(p.depthM(), q.depthM()))
              .orElseThrow();
      TLUSTY
          .row("k " + k + ", zeta " + zeta + ", f_n " + fn + ", K_s " + ksMPa)
          .percent("lowest of lobe " + i, "1/min", speeds[i] * 60, lowest.revPerS() * 60, 0.3);
      assertThat(lobes.depthAtM(speeds[i]))
          .isCloseTo(lobes.leastDepthM(), Percentage.withPercentage(0.3));
    }
  }

  /**
   * [derived] Kt 1500 MPa, Kr 0.3, 4 teeth, 400 Hz, zeta 0.02, k 5e6 N/m; a positive factor takes
   * the greatest Re G, below the natural frequency.
   */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0}: axx {1} ayy {2}, along {3} mm, across {5} mm [derived]")
  @CsvSource({
    "slot, -.94248, -.94248, .45333, 407.92, .45333, 407.92",
    "half up, -1.47124, .52876, .29041, 407.92, .77635, 391.92",
    "half down, .52876, -1.47124, .77635, 391.92, .29041, 407.92",
    "quarter up, -.93426, .30594, .45732, 407.92, 1.34178, 391.92",
    "quarter down, .56574, -1.19406, .72560, 391.92, .35782, 407.92",
    "centred D63 w10, -.18967, -.00161, 2.25259, 407.92, 265.05, 407.92",
    "centred D80 w60, -.80648, -.21119, .52978, 407.92, 2.02309, 407.92"
  })
  void oneFlexibleDirectionIsLimitedOnTheSideItsFactorSays(
      String arc,
      double axx,
      double ayy,
      double alongMm,
      double alongHz,
      double acrossMm,
      double acrossHz) {
    DirectionalFactors factors = factors(arc, 0.3);
    List<DampedMode> mode = List.of(new DampedMode(400, 0.02, 5e6));
    StabilityLobes along = StabilityLobes.milling(mode, List.of(), factors, 1.5e9, 4);
    StabilityLobes across = StabilityLobes.milling(List.of(), mode, factors, 1.5e9, 4);
    // The factor of the centred narrow stock has three digits only.
    double across0 = acrossMm > 100 ? 0.5 : 0.05;
    ONE.row(arc)
        .figure("a_xx", "", axx, factors.xx(), 1e-5)
        .figure("a_yy", "", ayy, factors.yy(), 1e-5)
        .percent("a_lim along", "mm", alongMm, along.leastDepthM() * 1e3, 0.05)
        .figure("f_c along", "Hz", alongHz, along.chatterHz(), 0.2)
        .percent("a_lim across", "mm", acrossMm, across.leastDepthM() * 1e3, across0)
        .figure("f_c across", "Hz", acrossHz, across.chatterHz(), 0.2);
  }

  /** [derived]; inputs Insperger and Stepan [memory], 2 teeth, Kt 600, Kn 200 MPa, 922 Hz. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0}: one direction {1} mm at {2} Hz [derived, inputs memory]")
  @CsvSource({
    "slot, .29805, 932.09",
    "half up, .20486, 932.09",
    "half down, .64091, 911.80",
    "quarter down, .55996, 911.80",
    "twentieth down, 1.7916, 911.80"
  })
  void theBenchmarkOfOneDirectionIsMet(String arc, double mm, double hz) {
    List<DampedMode> mode = List.of(new DampedMode(922, 0.011, 1.34005e6));
    StabilityLobes lobes = StabilityLobes.milling(mode, List.of(), factors(arc, 1.0 / 3), 6e8, 2);
    BENCHMARK
        .row("one direction, " + arc)
        .percent("a_lim", "mm", mm, lobes.leastDepthM() * 1e3, 0.1)
        .figure("f_c", "Hz", hz, lobes.chatterHz(), 0.4);
  }

  /** [derived]; the same oscillator in both directions. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0}: two directions {1} mm at {2} Hz [derived, inputs memory]")
  @CsvSource({
    "slot, .04793, 923.59",
    "half up, .12674, 924.12",
    "half down, .12674, 924.12",
    "quarter down, .27323, 0",
    "twentieth down, 1.3114, 0"
  })
  void theBenchmarkOfTwoDirectionsIsMet(String arc, double mm, double hz) {
    List<DampedMode> mode = List.of(new DampedMode(922, 0.011, 1.34005e6));
    StabilityLobes lobes = StabilityLobes.milling(mode, mode, factors(arc, 1.0 / 3), 6e8, 2);
    PublishedTable.Row row = BENCHMARK.row("two directions, " + arc);
    row.percent("a_lim", "mm", mm, lobes.leastDepthM() * 1e3, 0.3);
    if (hz > 0) {
      // The frequency is read from a grid; the depth is flat there.
      row.figure("f_c", "Hz", hz, lobes.chatterHz(), 0.7);
    }
  }

  /** [derived]; inputs found as data in an academic script (a textbook example for Al 7075). */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0}: {1} mm at {2} Hz [derived, inputs found]")
  @CsvSource({"half down, .9571, 1440.2", "half up, 1.8156, 510.6", "slot, .5230, 1448.0"})
  void aToolWithTwoModesEachWayIsLimitedByTheWorst(String arc, double mm, double hz) {
    List<DampedMode> x =
        List.of(
            new DampedMode(456.780, .111705, 7.93310e6),
            new DampedMode(1448.889, .0170370, 1.469178e7));
    List<DampedMode> y =
        List.of(
            new DampedMode(516.518, .0245796, 9.37461e6),
            new DampedMode(1408.448, .0313576, 1.240639e7));
    StabilityLobes lobes = StabilityLobes.milling(x, y, factors(arc, 788.8 / 1319.4), 1319.4e6, 2);
    TWO.row(arc)
        .percent("a_lim", "mm", mm, lobes.leastDepthM() * 1e3, 0.3)
        .figure("f_c", "Hz", hz, lobes.chatterHz(), 1.5);
    if (arc.equals("half down")) {
      for (double rpm : new double[] {27237, 16706, 12048, 9421, 7734}) {
        TWO.row(arc)
            .percent("limit at " + rpm + " 1/min", "mm", mm, lobes.depthAtM(rpm / 60) * 1e3, 1.5);
      }
    }
  }

  /** [derived]; inputs Budak and Altintas 1998 [memory], 3 teeth. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0}: {1} mm at {2} Hz [derived, inputs memory]")
  @CsvSource({"half up, 1.0868, 632.98", "half down, 3.5194, 606.46", "slot, .77744, 626.13"})
  void aCutterWithUnequalModesIsLimitedByBothDirections(String arc, double mm, double hz) {
    StabilityLobes lobes =
        StabilityLobes.milling(
            List.of(new DampedMode(603, .039, 5.59e6)),
            List.of(new DampedMode(666, .035, 5.715e6)),
            factors(arc, .07),
            6e8,
            3);
    BUDAK
        .row(arc)
        .percent("a_lim", "mm", mm, lobes.leastDepthM() * 1e3, 0.3)
        .figure("f_c", "Hz", hz, lobes.chatterHz(), 1.5);
  }

  /**
   * Climb and conventional cuts of one arc are mirror images: x and y factors of a side exchange.
   */
  @Test
  void climbAndConventionalAreMirrorImages() {
    DirectionalFactors up = factors("quarter up", 0.3);
    DirectionalFactors mirrored = DirectionalFactors.of(Math.PI / 3, Math.PI / 2, 0);
    assertThat(factors("half up", 0.3).xx())
        .isCloseTo(factors("half down", 0.3).yy(), within(1e-12));
    assertThat(factors("half up", 0.3).yy())
        .isCloseTo(factors("half down", 0.3).xx(), within(1e-12));
    assertThat(up.yy()).isPositive();
    assertThat(factors("quarter down", 0.3).yy()).isNegative();
    assertThat(mirrored.xx()).isNegative();
  }

  @Property(tries = 150)
  void noSpeedIsLimitedBelowTheLeastDepthAndNothingIsEverInfinite(
      @ForAll @DoubleRange(min = 0, max = 3.1) double entry,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll @DoubleRange(min = 0, max = 1) double kr,
      @ForAll @DoubleRange(min = 0.1, max = 1000) double revPerS,
      @ForAll @IntRange(min = 1, max = 12) int teeth) {
    double exit = entry + share * (Math.PI - entry);
    DirectionalFactors factors = DirectionalFactors.of(entry, exit, kr);
    List<DampedMode> across =
        List.of(new DampedMode(800, 0.02, 3e6), new DampedMode(1100, 0.03, 9e6));
    List<DampedMode> along = List.of(new DampedMode(700, 0.04, 2e7));
    for (StabilityLobes lobes :
        List.of(
            StabilityLobes.milling(List.of(), across, factors, 2e9, teeth),
            StabilityLobes.milling(along, across, factors, 2e9, teeth))) {
      assertThat(lobes.leastDepthM()).isGreaterThan(0).isLessThanOrEqualTo(StabilityLobes.CAP_M);
      assertThat(lobes.depthAtM(revPerS)).isBetween(lobes.leastDepthM(), StabilityLobes.CAP_M);
      for (Lobe.Point best : lobes.bestSpeeds(1, 1000, 3)) {
        assertThat(best.revPerS()).isBetween(1.0, 1000.0);
        assertThat(best.depthM()).isBetween(lobes.leastDepthM(), StabilityLobes.CAP_M);
      }
    }
  }

  /** Dimension: twice the stiffness, or half the cutting force, allows twice the depth. */
  @Property(tries = 50)
  void theLimitGoesWithStiffnessOverCuttingForce(
      @ForAll @DoubleRange(min = 0.2, max = 5) double factor) {
    DirectionalFactors arc = factors("half down", 0.3);
    StabilityLobes one =
        StabilityLobes.milling(List.of(), List.of(new DampedMode(400, 0.02, 5e6)), arc, 1.5e9, 4);
    StabilityLobes stiffer =
        StabilityLobes.milling(
            List.of(), List.of(new DampedMode(400, 0.02, 5e6 * factor)), arc, 1.5e9, 4);
    StabilityLobes milder =
        StabilityLobes.milling(
            List.of(), List.of(new DampedMode(400, 0.02, 5e6)), arc, 1.5e9 / factor, 4);
    assertThat(stiffer.leastDepthM() / one.leastDepthM())
        .isCloseTo(factor, Percentage.withPercentage(1e-6));
    assertThat(milder.leastDepthM() / one.leastDepthM())
        .isCloseTo(factor, Percentage.withPercentage(1e-6));
  }

  @Test
  void aLobeTopStandsWellAboveTheLeastDepth() {
    StabilityLobes lobes =
        StabilityLobes.milling(
            List.of(),
            List.of(new DampedMode(400, 0.02, 5e6)),
            factors("half down", 0.3),
            1.5e9,
            4);
    Lobe.Point best = lobes.bestSpeeds(40, 120, 3).get(0);
    // The tooth frequency just below resonance leaves room; 400 Hz over 4 teeth is 100 1/s.
    assertThat(best.revPerS()).isBetween(90.0, 105.0);
    assertThat(best.depthM()).isGreaterThan(3 * lobes.leastDepthM());
  }
}
