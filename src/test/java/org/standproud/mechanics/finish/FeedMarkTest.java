package org.standproud.mechanics.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hipparchus.analysis.integration.RombergIntegrator;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.setup.Band;

class FeedMarkTest {

  private static final PublishedTable CORNER =
      new PublishedTable(
          Subject.FINISH,
          "r - sqrt(r^2 - f^2/4) and f^2/(18 sqrt3 r), Boothroyd and Knight (from memory)",
          SourceTag.DERIVED);

  private static final PublishedTable PARABOLA =
      new PublishedTable(
          Subject.FINISH,
          "f^2/(8 r), within 1.6 % of the arc for f/r below .5 (Qu and Shih 2003, abstract read)",
          SourceTag.DERIVED);

  private static final PublishedTable PERIPHERY =
      new PublishedTable(Subject.FINISH, "R_t = f^2/(4 D)", SourceTag.DERIVED);

  private static final PublishedTable SHARP =
      new PublishedTable(
          Subject.FINISH,
          "R_t = f/(tan C_s + cot C_e), Boothroyd and Knight (from memory)",
          SourceTag.DERIVED);

  private static final PublishedTable TRAM =
      new PublishedTable(
          Subject.FINISH, "c = R (1 - sqrt(1 - (w/D)^2)) tan(theta)", SourceTag.DERIVED);

  /** Rt and Ra of a rounded corner; Boothroyd and Knight [memory], numbers [derived]. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "f {0} mm, corner {1} mm [derived]")
  @CsvSource({
    ".05, .4, .7813, .7820, .2005, .1953",
    ".1, .4, 3.1250, 3.1373, .8019, .7813",
    ".1, .8, 1.5625, 1.5640, .4009, .3906",
    ".15, .8, 3.5156, 3.5234, .9021, .8789",
    ".2, .8, 6.2500, 6.2746, 1.6038, 1.5625",
    ".2, 1.2, 4.1667, 4.1739, 1.0692, 1.0417",
    ".3, 1.6, 7.0312, 7.0468, 1.8042, 1.7578"
  })
  void aRoundedCornerLeavesTheMarksOfItsArc(
      double feedMm,
      double radiusMm,
      double parabolaRtUm,
      double exactRtUm,
      double raUm,
      double shortcutRaUm) {
    double feed = feedMm / 1e3;
    double radius = radiusMm / 1e3;

    CORNER
        .row("f " + feedMm + " mm, r " + radiusMm + " mm")
        .figure("R_t", "um", exactRtUm, CornerMark.rtM(feed, radius) * 1e6, 6e-5)
        .figure("R_a", "um", raUm, CornerMark.raM(feed, radius) * 1e6, 6e-5);
    PARABOLA
        .row("f " + feedMm + " mm, r " + radiusMm + " mm")
        .percent("R_t", "um", parabolaRtUm, CornerMark.rtM(feed, radius) * 1e6, 1.6);
    assertThat(feed * feed / (8 * radius)).isCloseTo(parabolaRtUm / 1e6, within(6e-11));
    assertThat(CornerMark.raM(feed, radius) / (shortcutRaUm / 1e6)).isBetween(1.02, 1.03);
  }

  /** Qu and Shih 2003, abstract: the parabola is within 1.6 % for f/r below .5 [found]. */
  @Property
  void theParabolaIsWithinOnePointSixPercentOfTheArc(
      @ForAll @Scale(4) @DoubleRange(min = .001, max = .5) double ratio) {
    double radius = .8e-3;
    double feed = ratio * radius;
    assertThat(CornerMark.rtM(feed, radius) / (feed * feed / (8 * radius))).isBetween(1.0, 1.017);
  }

  /** The mean height of an arc from its own mean line, integrated, against f^2/(18 sqrt3 r). */
  @Test
  void theMeanRoughnessIsTheMeanDistanceFromTheMeanLine() {
    double feed = .1;
    double radius = .8;
    RombergIntegrator sum = new RombergIntegrator();
    double mean = sum.integrate(1_000_000, x -> x * x / (2 * radius), -feed / 2, feed / 2) / feed;
    double crossing = FastMath.sqrt(2 * radius * mean);
    double below =
        sum.integrate(1_000_000, x -> mean - x * x / (2 * radius), -crossing, crossing) / feed;

    assertThat(CornerMark.raM(feed / 1e3, radius / 1e3) * 1e3).isCloseTo(2 * below, within(1e-9));
  }

  /** Rt = fz^2/(4 D); with one tooth proud the feed per turn counts [derived]. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "f {0} mm, D {1} mm: {2} um [derived]")
  @CsvSource({".1, 20, .125", ".2, 63, .1587", ".05, 10, .0625", ".15, 50, .1125", ".4, 20, 2.0"})
  void thePeripheryLeavesFlatScallops(double feedMm, double diameterMm, double rtUm) {
    double rt = PeripheralMark.rtM(feedMm / 1e3, diameterMm / 1e3);
    PERIPHERY
        .row("f " + feedMm + " mm, D " + diameterMm + " mm")
        .figure("R_t", "um", rtUm, rt * 1e6, 6e-5);
    assertThat(PeripheralMark.raM(feedMm / 1e3, diameterMm / 1e3))
        .isCloseTo(CornerMark.raM(feedMm / 1e3, diameterMm / 2e3), within(1e-15));
  }

  /** Trail angle 10 degrees, f .1: 17.63 um [derived]; Boothroyd and Knight [memory]. */
  @Tag(PublishedTable.TESTS)
  @Test
  void aSharpCornerLeavesTeethOfASaw() {
    double rt = SharpCornerMark.rtM(.1e-3, 0, FastMath.toRadians(10));
    SHARP.row("trail angle 10 deg, f 0.1 mm").figure("R_t", "um", 17.63, rt * 1e6, 5e-3);
    assertThat(SharpCornerMark.raM(.1e-3, 0, FastMath.toRadians(10)))
        .isCloseTo(17.63e-6 / 4, within(5e-9));
  }

  /** c = R (1 - sqrt(1 - (w/D)^2)) tan(theta) [derived]. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "D {0} w {1} lean {2}/{3}: {4} um [derived]")
  @CsvSource({"63, 60, .02, 300, 1.46", "50, 10, .05, 200, .126"})
  void aLeaningSpindleMillsHollow(
      double diameterMm, double widthMm, double riseMm, double overMm, double hollowUm) {
    double lean = FastMath.atan(riseMm / overMm);
    TRAM.row("D " + diameterMm + " mm, w " + widthMm + " mm, " + riseMm + "/" + overMm)
        .figure(
            "hollow",
            "um",
            hollowUm,
            TramError.hollowM(diameterMm / 1e3, widthMm / 1e3, lean) * 1e6,
            5e-3);
  }

  /** Design rule f_rev up to .8 of the flat [memory]. */
  @Test
  void aWiperFlatHasToBeLongerThanTheFeedPerTurn() {
    Band ratio = WiperFlat.feedOverFlat(Band.exactly(.8e-3), 1e-3);
    assertThat(ratio.likely()).isCloseTo(WiperFlat.DESIGN_RATIO, within(1e-12));
  }

  @Test
  void aFeedLongerThanItsRoundCornerIsRefused() {
    assertThatThrownBy(() -> CornerMark.rtM(.5e-3, .4e-3)).isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> CornerMark.raM(.1e-3, 0)).isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> PeripheralMark.rtM(Double.NaN, .02))
        .isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> TramError.hollowM(.05, .06, 1e-4)).isInstanceOf(OutsideValidity.class);
  }
}
