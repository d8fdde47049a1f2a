package org.standproud.mechanics.holding.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.holding.jaw.Bearing;
import org.standproud.mechanics.holding.jaw.RigidLimits;
import org.standproud.setup.Band;

class JawGripTest {

  private static final double H = 0.06;
  private static final double G = 0.015;
  private static final double L = 0.12;

  private static JawGrip grip(double clamp, double mu, double g, double h, boolean seated) {
    RigidLimits limits = new RigidLimits(Bearing.lineAt(g / 2), Bearing.wholeFace(g), h, 0);
    return new JawGrip(
        clamp,
        mu,
        limits.towardFixedN(clamp),
        limits.awayN(clamp),
        L,
        0.010,
        g,
        seated,
        false,
        false);
  }

  private static HoldingLoad load(double x, double y, double z, double h, double place) {
    return new HoldingLoad(
        Band.exactly(Math.min(x, 0)),
        Band.exactly(Math.max(x, 0)),
        Band.exactly(Math.min(y, 0)),
        Band.exactly(Math.max(y, 0)),
        Band.exactly(Math.min(z, 0)),
        Band.exactly(Math.max(z, 0)),
        h,
        place,
        0);
  }

  private static double combined(JawGrip grip, HoldingLoad load) {
    return grip.combinedMargin(load, load.adverse());
  }

  @ParameterizedTest(name = "{0} N at friction {1} and factor {2} needs {3} kN (derived)")
  @CsvSource({"1200,.15,2.5,10", "800,.2,2,4"})
  void theClampingForceAgainstSlipIsThatOfTheHandFormula(
      double force, double mu, double factor, double kilonewtons) {
    HoldingLoad load = load(force, 0, 0, H, 0);
    assertThat(grip(kilonewtons * 1e3, mu, G, H, false).slipMargin(load.adverse()))
        .isCloseTo(factor, within(1e-12));
  }

  @Test
  void aPureLiftAtMidLengthIsHeldByBothFacesAtFullFriction() {
    HoldingLoad load = load(0, 0, 600, H, 0);
    assertThat(combined(grip(20_000, 0.15, G, H, false), load)).isCloseTo(10, within(1e-6));
    assertThat(grip(20_000, 0.15, G, H, false).liftMargin(load.adverse()))
        .isCloseTo(10, within(1e-12));
  }

  @Test
  @DisplayName("Derived from statics, own model: slip with pitch at height 60 over a 15 mm grip")
  void aLengthwisePushHighAboveTheJawsPitchesTheStock() {
    double pitch = 4 * 0.075 * 600 / L;
    double expected = 6000 / Math.hypot(600, pitch);
    HoldingLoad load = load(600, 0, 0, H, 0);
    assertThat(combined(grip(20_000, 0.15, G, H, false), load)).isCloseTo(expected, within(1e-6));
    assertThat(combined(grip(20_000, 0.15, G, H, true), load))
        .isCloseTo(6000 / Math.hypot(600, pitch / 2), within(1e-6));
  }

  @Test
  void aPurePushAcrossTipsAtTheRigidLimit() {
    JawGrip grip = grip(20_000, 0.15, G, H, false);
    assertThat(combined(grip, load(0, 500, 0, H, 0)))
        .isCloseTo(grip.tipTowardFixedN() / 500, within(1e-6));
    assertThat(combined(grip, load(0, -500, 0, H, 0)))
        .isCloseTo(grip.tipAwayN() / 500, within(1e-6));
  }

  @Test
  void theCombinedFactorLeavesNoFrictionOver() {
    JawGrip grip = grip(20_000, 0.15, G, H, false);
    double fx = 400;
    double fy = 500;
    double fz = 150;
    double place = 0.03;
    double m = combined(grip, load(fx, fy, fz, H, place));
    // The same balance written out by hand, at the factor returned.
    double press = 20_000 - m * fy;
    double contact = Math.min(1, 1.5 * (1 - m * fy / grip.tipTowardFixedN()));
    double shift = m * place * fy / press;
    double length = L - 2 * shift;
    double pitch = (H + G) * fx + fz * (place + shift);
    double need = m * Math.hypot(fx, fz + 4 * pitch / length);
    assertThat(need).isCloseTo(2 * 0.15 * press * contact, within(1e-3));
  }

  @Property
  void theCombinedMarginIsNeverAboveAnySingleOne(
      @ForAll @DoubleRange(min = -2000, max = 2000) double x,
      @ForAll @DoubleRange(min = -2000, max = 2000) double y,
      @ForAll @DoubleRange(min = -2000, max = 2000) double z) {
    JawGrip grip = grip(20_000, 0.15, G, H, true);
    HoldingLoad load = load(x, y, z, H, 0.02);
    double all = combined(grip, load);
    assertThat(all).isLessThanOrEqualTo(grip.slipMargin(load.adverse()) * (1 + 1e-9));
    assertThat(all).isLessThanOrEqualTo(grip.liftMargin(load.adverse()) * (1 + 1e-9));
  }

  @Property
  void moreClampMoreFrictionAndDeeperSettingNeverLowerTheMargin(
      @ForAll @DoubleRange(min = -2000, max = 2000) double x,
      @ForAll @DoubleRange(min = -2000, max = 2000) double y,
      @ForAll @DoubleRange(min = -2000, max = 2000) double z,
      @ForAll @DoubleRange(min = 1, max = 2) double more) {
    HoldingLoad load = load(x, y, z, H, 0.02);
    double start = combined(grip(20_000, 0.15, G, H, false), load) * (1 - 1e-9);
    assertThat(combined(grip(20_000 * more, 0.15, G, H, false), load))
        .isGreaterThanOrEqualTo(start);
    assertThat(combined(grip(20_000, 0.15 * more, G, H, false), load))
        .isGreaterThanOrEqualTo(start);
    // The same stock set deeper: what the grip gains the stick-out loses.
    double h = H - G * (more - 1);
    assertThat(combined(grip(20_000, 0.15, G * more, h, false), load(x, y, z, h, 0.02)))
        .isGreaterThanOrEqualTo(start);
    assertThat(combined(grip(20_000, 0.15, G, H, true), load)).isGreaterThanOrEqualTo(start);
  }

  @Property
  void moreForceOrAHigherOrFurtherCutNeverRaisesTheMargin(
      @ForAll @DoubleRange(min = -2000, max = 2000) double x,
      @ForAll @DoubleRange(min = -2000, max = 2000) double y,
      @ForAll @DoubleRange(min = -2000, max = 2000) double z,
      @ForAll @DoubleRange(min = 1, max = 2) double more) {
    JawGrip grip = grip(20_000, 0.15, G, H, true);
    double start = combined(grip, load(x, y, z, H, 0.02)) * (1 + 1e-9);
    assertThat(combined(grip, load(x * more, y, z, H, 0.02))).isLessThanOrEqualTo(start);
    assertThat(combined(grip, load(x, y * more, z, H, 0.02))).isLessThanOrEqualTo(start);
    assertThat(combined(grip, load(x, y, z * more, H, 0.02))).isLessThanOrEqualTo(start);
    assertThat(combined(grip, load(x, y, z, H, 0.02 * more))).isLessThanOrEqualTo(start);
    assertThat(combined(grip, load(x, y, z, H * more, 0.02))).isLessThanOrEqualTo(start);
  }

  @Property
  void leftAndRightAreAlikeWithoutAStop(
      @ForAll @DoubleRange(min = -2000, max = 2000) double x,
      @ForAll @DoubleRange(min = -2000, max = 2000) double y,
      @ForAll @DoubleRange(min = -2000, max = 2000) double z) {
    JawGrip grip = grip(20_000, 0.15, G, H, false);
    assertThat(combined(grip, load(-x, y, z, H, -0.02)))
        .isEqualTo(combined(grip, load(x, y, z, H, 0.02)));
  }
}
