package org.standproud.mechanics.holding.jaw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;

class RigidLimitsTest {

  private static final double N = 20_000;
  private static final double G = 0.015;
  private static final double H = 0.060;

  private static RigidLimits wire(double depth, double share) {
    return new RigidLimits(Bearing.lineAt(depth), Bearing.wholeFace(G), H, share);
  }

  private static RigidLimits whole(double share) {
    return new RigidLimits(Bearing.wholeFace(G), Bearing.wholeFace(G), H, share);
  }

  /** Moment about the X axis of a force at (y, z): y Fz - z Fy, summed over the three forces. */
  private static double moment(double clamp, double w, double fixed, double r, double fy) {
    double cut = -H * fy;
    double movable = -(-w) * clamp;
    double jaw = -(-r) * -fixed;
    return cut + movable + jaw;
  }

  @Property
  void theFixedJawsResultantBalancesForceAndMomentByItsOwnLevers(
      @ForAll @DoubleRange(min = 0, max = 15) double wMm,
      @ForAll @DoubleRange(min = -3000, max = 3000) double fy) {
    double r = RigidLimits.resultantDepthM(N, wMm * 1e-3, H, fy);
    assertThat(Math.abs(moment(N, wMm * 1e-3, N + fy, r, fy))).isLessThan(1e-7);
  }

  @Property
  void atTheLimitTheResultantStandsAtTheLipOrAtTheBottom(
      @ForAll @DoubleRange(min = 1, max = 14) double wMm) {
    double w = wMm * 1e-3;
    RigidLimits limits = wire(w, 0);
    assertThat(RigidLimits.resultantDepthM(N, w, H, limits.towardFixedN(N)))
        .isCloseTo(0, within(1e-12));
    assertThat(RigidLimits.resultantDepthM(N, w, H, -limits.awayN(N))).isCloseTo(G, within(1e-12));
  }

  @Test
  void aPushTowardTheFixedJawRaisesItsResultantTowardTheLip() {
    double rest = RigidLimits.resultantDepthM(N, 0.008, H, 0);
    assertThat(rest).isCloseTo(0.008, within(1e-15));
    assertThat(RigidLimits.resultantDepthM(N, 0.008, H, 500)).isLessThan(rest);
    assertThat(RigidLimits.resultantDepthM(N, 0.008, H, -500)).isGreaterThan(rest);
  }

  @Test
  @DisplayName("Derived from statics, own model; wire and whole face, clamping force constant")
  void theLimitsAreThoseOfTheLeverRule() {
    assertThat(wire(0.006, 0).towardFixedN(N)).isCloseTo(N * 0.006 / H, within(1e-9));
    assertThat(wire(0.006, 0).awayN(N)).isCloseTo(N * 0.009 / (H + G), within(1e-9));
    assertThat(whole(0).towardFixedN(N)).isCloseTo(N * G / H, within(1e-9));
    assertThat(whole(0).awayN(N)).isCloseTo(N * G / (H + G), within(1e-9));
  }

  @Test
  @DisplayName(
      "Derived from statics: 20 kN, 15 mm grip, 100 N.m without a gap, 300 N.m at the edge")
  void twentyKilonewtonsOnFifteenMillimetresHoldOneHundredNewtonMetresWithoutAGap() {
    Bearing third = Bearing.withoutGap(G);
    double lever = H + G / 2;
    double noGap = new RigidLimits(third, third, H, 0.5).towardFixedN(N);
    assertThat(noGap * lever).isCloseTo(100, within(1e-9));
    assertThat(noGap / 2).isCloseTo(740.7, within(0.05));
    assertThat(whole(0.5).towardFixedN(N) * lever).isCloseTo(300, within(1e-9));
    assertThat(whole(0.5).awayN(N) * lever).isCloseTo(300, within(1e-9));
    assertThat(RigidLimits.frictionCoupleNm(0.15, N, 0.010)).isCloseTo(30, within(1e-9));
  }

  @Test
  void halfTheLoadOnEachJawMakesBothDirectionsAlike() {
    assertThat(whole(0.5).towardFixedN(N)).isCloseTo(whole(0.5).awayN(N), within(1e-9));
  }

  @Property
  void aShareLostFromTheClampLowersTheLimitTowardTheFixedJawOnly(
      @ForAll @DoubleRange(min = 1, max = 14) double wMm,
      @ForAll @DoubleRange(min = 0.01, max = 1) double s) {
    double w = wMm * 1e-3;
    assertThat(wire(w, s).towardFixedN(N)).isLessThan(wire(w, 0).towardFixedN(N));
    assertThat(wire(w, s).awayN(N)).isGreaterThan(wire(w, 0).awayN(N));
    double fy = wire(w, s).towardFixedN(N);
    double clamp = N - s * fy;
    assertThat(Math.abs(moment(clamp, w, clamp + fy, 0, fy))).isLessThan(1e-7);
  }

  @Test
  void aWireAtTheFixedJawSwapsTheDirectionsRoughly() {
    RigidLimits limits = new RigidLimits(Bearing.wholeFace(G), Bearing.lineAt(0.006), H, 0);
    assertThat(limits.towardFixedN(N)).isCloseTo(N * 0.009 / (H + 0.006), within(1e-9));
    assertThat(limits.awayN(N)).isCloseTo(N * 0.006 / (H + 0.006), within(1e-9));
  }

  @Test
  void wiresOnBothSidesAtOneDepthAreAHinge() {
    RigidLimits limits = new RigidLimits(Bearing.lineAt(0.007), Bearing.lineAt(0.007), H, 0);
    assertThat(limits.towardFixedN(N)).isZero();
    assertThat(limits.awayN(N)).isZero();
  }

  @Test
  void deeperPackingTradesThePushAwayForThePushToward() {
    double before = Double.NEGATIVE_INFINITY;
    double beforeAway = Double.POSITIVE_INFINITY;
    for (double w = 0; w <= G; w += G / 10) {
      BestPackingDepth point = BestPackingDepth.at(w, G, H, N, 0.3);
      assertThat(point.towardFixedN()).isGreaterThan(before);
      assertThat(point.awayN()).isLessThan(beforeAway);
      before = point.towardFixedN();
      beforeAway = point.awayN();
    }
  }

  @Property
  void noOtherDepthInTheMiddleThirdBeatsTheBestOne(
      @ForAll @DoubleRange(min = 0, max = 2000) double toward,
      @ForAll @DoubleRange(min = 0, max = 2000) double away,
      @ForAll @DoubleRange(min = 5, max = 10) double otherMm) {
    BestPackingDepth best = BestPackingDepth.of(G, 0.003, H, N, 0.2, toward, away);
    BestPackingDepth tried = BestPackingDepth.at(otherMm * 1e-3, G, H, N, 0.2);
    assertThat(smaller(best, toward, away) * (1 + 1e-5))
        .isGreaterThanOrEqualTo(smaller(tried, toward, away));
  }

  private static double smaller(BestPackingDepth at, double toward, double away) {
    return Math.min(at.towardFixedN() / Math.max(toward, 1e-3), at.awayN() / Math.max(away, 1e-3));
  }

  @Test
  void withoutAPushTheWireLiesWhereAPushEitherWayWouldBeHeldAlike() {
    BestPackingDepth best = BestPackingDepth.of(G, 0.003, H, N, 0.2, 0, 0);
    assertThat(best.towardFixedN()).isCloseTo(best.awayN(), within(0.01));
    assertThat(best.depthM())
        .isCloseTo(BestPackingDepth.of(G, 0.003, H, N, 0.2, 300, 300).depthM(), within(1e-8));
  }

  @Test
  void withEqualPushesBothWaysTheWireLiesJustAboveTheMiddle() {
    BestPackingDepth best = BestPackingDepth.of(G, 0.003, H, N, 0, 500, 500);
    assertThat(best.depthM()).isCloseTo(G * H / (2 * H + G), within(1e-8));
    assertThat(best.towardFixedN()).isCloseTo(best.awayN(), within(0.01));
  }

  @Test
  void knownLimitsAreRefused() {
    assertThatThrownBy(() -> BestPackingDepth.at(0.016, G, H, N, 0))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("depth of the packing");
    assertThatThrownBy(() -> new RigidLimits(Bearing.lineAt(0.01), Bearing.wholeFace(G), 0, 0))
        .isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> RigidLimits.resultantDepthM(N, 0.01, H, -N))
        .isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> new Bearing(0.01, 0.005)).isInstanceOf(OutsideValidity.class);
  }
}
