package org.standproud.mechanics.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.engagement.PassFixture;
import org.standproud.mechanics.engagement.PassStretch;
import org.standproud.setup.Band;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Spin;

class PassForcesTest {

  private static PassForces forces(PassFixture pass) {
    return PassForces.of(ForceInput.of(pass.stock(), pass.cutter(), pass.cut())).orElseThrow();
  }

  private static PassForces forces(PassFixture pass, ForceModel model) {
    return PassForces.of(ForceInput.of(pass.stock(), pass.cutter(), pass.cut()).with(model))
        .orElseThrow();
  }

  private static ForceModel plain(double kcMpa, double mc, double ratio, double lift) {
    return new ForceModel.Kienzle(
        Band.exactly(kcMpa * 1e6),
        Band.exactly(mc),
        Band.exactly(1),
        Band.exactly(ratio),
        Band.exactly(lift));
  }

  /**
   * By hand. One tooth, D 50, stock 10 mm wide centred 15 mm on the fixed-jaw side, clockwise,
   * toward +x: arc 36.870 to 66.422 deg. Take kc = 2000 MPa (mc 0), f_z 0.1, a_p 2, F_r = 0.3 F_t.
   * At 66.422 deg: h = 0.091652, F_t = 2000 x 2 x 0.091652 = 366.61 N, F_r = 109.98 N. The tooth
   * moves along (cos, -sin) = (0.4, -0.91652) and drags the work with it; it stands at (sin, cos) =
   * (0.91652, 0.4) from the axis and pushes the work outward. So x = 366.61 x 0.4 + 109.98 x
   * 0.91652 = 247.44 N and y = -366.61 x 0.91652 + 109.98 x 0.4 = -292.01 N: ahead, and away from
   * the fixed jaw, toward the cutter.
   */
  @Test
  void oneToothWorkedByHand() {
    PassForces forces = forces(PassFixture.pass(50, 1, 10, -15, 0.1), plain(2000, 0, 0.3, 0));
    VectorBand blow = forces.oneToothAt(forces.steadyArc().exitRad());
    assertThat(blow.xN().likely()).isCloseTo(247.44, within(0.01));
    assertThat(blow.yN().likely()).isCloseTo(-292.01, within(0.01));
    // over the arc x is greatest where sin(2 phi)/2 + 0.15 (1 - cos(2 phi)) is: 400 x 0.67202
    assertThat(forces.steady().x().greatestN().likely()).isCloseTo(268.81, within(0.1));
    assertThat(forces.steady().y().leastN().likely()).isCloseTo(-292.01, within(0.01));
    assertThat(forces.steady().x().leastN().likely()).as("between blows").isZero();
  }

  @Property(tries = 60)
  void reversingTheSpinMirrorsTheForceInThePlaneOfTheFeed(
      @ForAll @DoubleRange(min = -40, max = 40) double y,
      @ForAll @DoubleRange(min = 0, max = 45) double helix,
      @ForAll FeedDirection feed) {
    PassFixture pass = PassFixture.pass(63, 5, 40, y, 0.1).shaped(60, 3, helix, 0.4);
    PathForces clockwise = forces(pass.turning(Spin.CLOCKWISE, feed)).path();
    PathForces mirrored = forces(pass.at(-y).turning(Spin.COUNTERCLOCKWISE, feed)).path();
    assertSame(mirrored.x().greatestN(), clockwise.x().greatestN());
    assertSame(mirrored.x().leastN(), clockwise.x().leastN());
    assertSame(mirrored.z().greatestN(), clockwise.z().greatestN());
    assertSame(mirrored.z().leastN(), clockwise.z().leastN());
    assertSame(mirrored.y().greatestN(), clockwise.y().leastN().times(-1));
    assertSame(mirrored.y().leastN(), clockwise.y().greatestN().times(-1));
  }

  @Property(tries = 60)
  void reversingTheFeedTurnsTheForceHalfRound(
      @ForAll @DoubleRange(min = -40, max = 40) double y, @ForAll Spin spin) {
    PassFixture pass = PassFixture.pass(63, 5, 40, y, 0.1).shaped(60, 3, 20, 0.4);
    PathForces one = forces(pass.turning(spin, FeedDirection.PLUS_X)).path();
    PathForces other = forces(pass.at(-y).turning(spin, FeedDirection.MINUS_X)).path();
    assertSame(other.x().greatestN(), one.x().leastN().times(-1));
    assertSame(other.y().greatestN(), one.y().leastN().times(-1));
    assertSame(other.y().leastN(), one.y().greatestN().times(-1));
    assertSame(other.z().greatestN(), one.z().greatestN());
    assertSame(other.z().leastN(), one.z().leastN());
  }

  private static void assertSame(Band actual, Band expected) {
    double rounding = 1e-9 * (1 + Math.abs(expected.low()) + Math.abs(expected.high()));
    assertThat(actual.low()).isCloseTo(expected.low(), within(rounding));
    assertThat(actual.likely()).isCloseTo(expected.likely(), within(rounding));
    assertThat(actual.high()).isCloseTo(expected.high(), within(rounding));
  }

  @Test
  void reversingTheFeedOfACentredFaceMillSwapsTheJawThatTakesTheLoad() {
    PassFixture pass = PassFixture.pass(63, 5, 10, 0, 0.12);
    AxisForce toward = forces(pass).steady().y();
    AxisForce back = forces(pass.turning(Spin.CLOCKWISE, FeedDirection.MINUS_X)).steady().y();
    assertThat(toward.meanN().high()).as("toward the movable jaw").isNegative();
    assertThat(back.meanN().low()).as("toward the fixed jaw").isPositive();
    assertThat(back.greatestN()).isEqualTo(toward.leastN().times(-1));
  }

  @Test
  void aMissingToothGivesTheToothBehindItADoubleBite() {
    PassFixture whole = PassFixture.pass(63, 5, 10, 0, 0.1);
    ForceModel law = plain(1500, 0.25, 0.3, 0);
    double usual = forces(whole, law).steady().greatestTangentialN().likely();
    PassFixture gap = whole.edges(EdgeCondition.FRESH, List.of(), List.of(3), 0.0);
    assertThat(forces(gap, law).steady().greatestTangentialN().likely())
        .isCloseTo(usual * Math.pow(2, 0.75), within(1e-6 * usual));
    PassFixture twoGaps = whole.edges(EdgeCondition.FRESH, List.of(1), List.of(2), 0.0);
    Band peak = forces(twoGaps, law).steady().greatestTangentialN();
    assertThat(peak.likely()).isCloseTo(usual * Math.pow(3, 0.75), within(1e-6 * usual));
    assertThat(peak.low()).as("a chipped tooth may still cut").isLessThan(usual * 1.69);
  }

  @Test
  void aCutterWithNoTeethLeftIsRefused() {
    PassFixture bare =
        PassFixture.pass(20, 2, 10, 0, 0.1)
            .edges(EdgeCondition.FRESH, List.of(), List.of(0, 1), 0.0);
    assertThatThrownBy(() -> forces(bare))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("teeth that cut");
  }

  @Property(tries = 100)
  void runOutRaisesThePeakAndKeepsTheChipOverARevolution(
      @ForAll @IntRange(min = 2, max = 8) int teeth,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double runOut) {
    PassFixture pass = PassFixture.pass(50, teeth, 10, 0, 0.1);
    // mc = 0: force is chip section, and the teeth together must take the feed of a revolution
    ForceModel section = plain(1000, 0, 0.3, 0);
    RevolutionForces even = forces(pass, section).steady();
    RevolutionForces uneven =
        forces(pass.edges(EdgeCondition.FRESH, List.of(), List.of(), runOut), section).steady();
    assertThat(uneven.greatestTangentialN().likely())
        .isGreaterThan(even.greatestTangentialN().likely());
    assertThat(uneven.meanTangentialN().likely())
        .isCloseTo(even.meanTangentialN().likely(), within(1e-3 * even.meanTangentialN().likely()));
  }

  /** With two teeth and a run-out past the feed only one cuts, with the feed of both. */
  @Test
  void aBadlyRunningCutterWithTwoTeethCutsWithOne() {
    PassFixture pass = PassFixture.pass(20, 2, 10, 0, 0.05);
    ForceModel law = plain(1500, 0.25, 0.3, 0);
    RevolutionForces one = forces(PassFixture.pass(20, 1, 10, 0, 0.1), law).steady();
    RevolutionForces bad =
        forces(pass.edges(EdgeCondition.FRESH, List.of(), List.of(), 0.2), law).steady();
    assertThat(bad.greatestTangentialN().likely())
        .isCloseTo(one.greatestTangentialN().likely(), within(1e-6));
    assertThat(bad.meanTangentialN().likely())
        .isCloseTo(one.meanTangentialN().likely(), within(1e-6));
  }

  @Property(tries = 60)
  void theHelixSpreadsThePeakAndLeavesTheMean(
      @ForAll @DoubleRange(min = 1, max = 55) double helix,
      @ForAll @DoubleRange(min = 0.5, max = 30) double depth,
      @ForAll @DoubleRange(min = 0.5, max = 19) double ae) {
    PassFixture straight = PassFixture.conventional(20, 3, ae, 0.05).shaped(90, depth, 0, 0);
    PassFixture wound = straight.shaped(90, depth, helix, 0);
    ForceModel law = plain(1500, 0.22, 0.4, 0);
    RevolutionForces a = forces(straight, law).steady();
    RevolutionForces b = forces(wound, law).steady();
    double size = a.greatestTangentialN().likely();
    assertThat(b.meanTangentialN().likely())
        .isCloseTo(a.meanTangentialN().likely(), within(1e-9 * size));
    assertThat(b.greatestTangentialN().likely()).isLessThan(size * (1 + 1e-3));
    assertThat(b.greatestTangentialN().likely())
        .isGreaterThanOrEqualTo(b.meanTangentialN().likely() * (1 - 1e-9));
  }

  @Test
  void theHelixLiftsTheWorkAndASlantedEdgePressesItDown() {
    PassFixture endMill = PassFixture.climb(20, 4, 5, 0.05).shaped(90, 10, 35, 0);
    assertThat(forces(endMill).steady().z().greatestN().low()).isPositive();
    assertThat(forces(endMill.shaped(90, 10, -35, 0)).steady().z().leastN().high()).isNegative();
    PassFixture faceMill = PassFixture.pass(63, 5, 10, 0, 0.12).shaped(45, 1, 0, 0);
    assertThat(forces(faceMill).steady().z().greatestN().high()).isCloseTo(0, within(1e-9));
    assertThat(forces(faceMill).steady().z().leastN().high()).isNegative();
  }

  /** Lead-in and run-out relieve the teeth that balance each other: the peak may be there. */
  @Test
  void theWorstPlaceOfAPassMayBeWhereTheCutterLeaves() {
    PassForces forces =
        forces(PassFixture.pass(80, 12, 79, 0, 0.1).shaped(90, 2, 0, 0), plain(1500, 0.22, 0.3, 0));
    double steady = forces.steady().x().leastN().likely();
    double pass = forces.path().x().leastN().likely();
    assertThat(pass).isLessThan(steady);
    assertThat(forces.path().stations().stream().map(PathStation::stretch).distinct())
        .containsExactly(PassStretch.LEAD_IN, PassStretch.STEADY, PassStretch.RUN_OUT);
    assertThat(forces.path().stations().get(0).axisXM()).isCloseTo(-0.14, within(1e-9));
  }

  @Property(tries = 80)
  void thePathIsNeverEasierThanSteadyCutting(
      @ForAll @DoubleRange(min = -45, max = 45) double y,
      @ForAll @DoubleRange(min = 4, max = 90) double width) {
    PassForces forces = forces(PassFixture.pass(63, 5, width, y * width / 100, 0.1));
    assertThat(forces.path().greatestInPlaneN().high())
        .isGreaterThanOrEqualTo(forces.steady().greatestInPlaneN().high());
    assertThat(forces.path().x().leastN().low())
        .isLessThanOrEqualTo(forces.steady().x().leastN().low());
  }

  @Test
  void whatIsNotKnownWidensTheBandAndIsSaid() {
    PassFixture known = PassFixture.pass(63, 5, 10, 0, 0.12);
    PassForces sure = forces(known);
    PassForces unsure = forces(known.edges(null, List.of(), List.of(), null));
    assertThat(sure.assumptions()).isEmpty();
    assertThat(unsure.assumptions())
        .extracting(a -> a.input().text())
        .containsExactly("/cutter/edge", "/cutter/runOut");
    Band wide = unsure.steady().greatestInPlaneN();
    Band narrow = sure.steady().greatestInPlaneN();
    assertThat(wide.high()).isGreaterThan(narrow.high());
    assertThat(wide.low()).isLessThanOrEqualTo(narrow.low());
    PassForces chipped = forces(known.edges(EdgeCondition.CHIPPED, List.of(), List.of(), 0.0));
    assertThat(chipped.assumptions())
        .extracting(a -> a.input().text())
        .containsExactly("/cutter/chippedTeeth");
  }

  @Test
  void aWornEdgePushesHarderThanAFreshOne() {
    PassFixture pass = PassFixture.pass(63, 5, 10, 0, 0.12);
    double last = 0;
    for (EdgeCondition state :
        List.of(
            EdgeCondition.FRESH, EdgeCondition.USED, EdgeCondition.WORN, EdgeCondition.CHIPPED)) {
      Band band = forces(pass.edges(state, List.of(), List.of(), 0.0)).steady().greatestInPlaneN();
      assertThat(band.high()).isGreaterThan(last);
      last = band.high();
    }
  }

  /** Everything inside the bands gives forces inside the band of forces. */
  @Property(tries = 150)
  void theBandSpansEveryForceOfInputsInsideTheBands(@ForAll long seed) {
    Random random = new Random(seed);
    double d = 10 + 70 * random.nextDouble();
    double width = 3 + 80 * random.nextDouble();
    double y = (random.nextDouble() - 0.5) * 0.9 * (d + width);
    int teeth = 1 + random.nextInt(8);
    PassFixture pass =
        PassFixture.pass(d, teeth, width, y, 0.1)
            .shaped(45 + 45 * random.nextDouble(), 2, 30 * random.nextInt(2), 0)
            .edges(EdgeCondition.USED, List.of(0), List.of(), null);
    Band feed = new Band(0.04, 0.08, 0.16);
    Band factor = new Band(1, 1.2, 1.5);
    Band ratio = new Band(0.2, 0.4, 0.8);
    Band lift = new Band(0.05, 0.2, 0.4);
    Band kc = new Band(1300e6, 1500e6, 2220e6);
    Band mc = new Band(0.14, 0.22, 0.25);
    PassForces banded =
        forces(pass.fed(feed, 10), new ForceModel.Kienzle(kc, mc, factor, ratio, lift));
    boolean chippedCuts = random.nextBoolean();
    PassFixture sampled =
        pass.fed(Band.exactly(inside(feed, random)), 10)
            .edges(
                EdgeCondition.USED,
                List.of(),
                chippedCuts || teeth == 1 ? List.of() : List.of(0),
                0.05 * random.nextDouble());
    PassForces exact =
        forces(
            sampled,
            new ForceModel.Kienzle(
                Band.exactly(inside(kc, random)),
                Band.exactly(inside(mc, random)),
                Band.exactly(inside(factor, random)),
                Band.exactly(inside(ratio, random)),
                Band.exactly(inside(lift, random))));
    assertSpans(banded.steady(), exact.steady());
    assertHolds(banded.path().x().greatestN(), exact.path().x().greatestN().likely());
    assertHolds(banded.path().x().leastN(), exact.path().x().leastN().likely());
    assertHolds(banded.path().y().greatestN(), exact.path().y().greatestN().likely());
    assertHolds(banded.path().y().leastN(), exact.path().y().leastN().likely());
  }

  /**
   * From 135 degrees on a tooth drags the work against the feed harder than a thrust below its
   * tangential force can push it ahead, however run-out lets teeth begin and cease to cut on the
   * way.
   */
  @Property(tries = 300)
  void aToothNearTheEndOfAClimbCutNeverPushesAheadWhateverTheRunOut(
      @ForAll @IntRange(min = 2, max = 8) int teeth,
      @ForAll @DoubleRange(min = 1, max = 14) double percentEngaged,
      @ForAll @DoubleRange(min = 0.01, max = 0.05) double runOut,
      @ForAll @DoubleRange(min = 0, max = 45) double helix) {
    PassFixture pass =
        PassFixture.climb(75, teeth, 0.75 * percentEngaged, 0.14)
            .shaped(90, 2, helix, 0)
            .edges(EdgeCondition.FRESH, List.of(), List.of(), runOut);
    RevolutionForces forces = forces(pass, plain(1500, 0.22, 1, 0.2)).steady();
    assertThat(forces.x().greatestN().likely()).isLessThanOrEqualTo(1e-9);
    assertThat(forces.y().greatestN().likely()).isLessThanOrEqualTo(1e-9);
  }

  private static double inside(Band band, Random random) {
    return band.low() + band.width() * random.nextDouble();
  }

  private static void assertSpans(RevolutionForces band, RevolutionForces exact) {
    assertSpans(band.x(), exact.x());
    assertSpans(band.y(), exact.y());
    assertSpans(band.z(), exact.z());
    assertHolds(band.greatestInPlaneN(), exact.greatestInPlaneN().likely());
    assertHolds(band.meanTangentialN(), exact.meanTangentialN().likely());
    assertHolds(band.greatestTangentialN(), exact.greatestTangentialN().likely());
  }

  private static void assertSpans(AxisForce band, AxisForce exact) {
    assertHolds(band.greatestN(), exact.greatestN().likely());
    assertHolds(band.meanN(), exact.meanN().likely());
    assertHolds(band.leastN(), exact.leastN().likely());
  }

  private static void assertHolds(Band band, double value) {
    assertThat(value).isBetween(band.low() - 1e-9, band.high() + 1e-9);
  }

  @Property(tries = 200)
  void noInputWithinReasonGivesANumberThatIsNone(@ForAll long seed) {
    Random random = new Random(seed);
    PassFixture pass =
        PassFixture.pass(
                1 + 150 * random.nextDouble(),
                1 + random.nextInt(20),
                0.5 + 100 * random.nextDouble(),
                150 * (random.nextDouble() - 0.5),
                0.001 + 0.2 * random.nextDouble())
            .ofLength(0.5 + 300 * random.nextDouble())
            .shaped(
                5 + 85 * random.nextDouble(),
                0.01 + 40 * random.nextDouble(),
                120 * (random.nextDouble() - 0.5),
                random.nextInt(3) * random.nextDouble())
            .turning(Spin.values()[random.nextInt(2)], FeedDirection.values()[random.nextInt(2)])
            .edges(
                random.nextBoolean() ? null : EdgeCondition.values()[random.nextInt(4)],
                List.of(),
                List.of(),
                random.nextBoolean() ? null : 0.1 * random.nextDouble());
    try {
      PassForces.of(ForceInput.of(pass.stock(), pass.cutter(), pass.cut()))
          .ifPresent(PassForcesTest::assertFinite);
    } catch (OutsideValidity refused) {
      assertThat(refused).hasMessageContaining("must lie between");
    }
  }

  private static void assertFinite(PassForces forces) {
    // a band cannot be built from NaN or infinity, so means of bands are enough here
    assertThat(forces.steady().meanTangentialN().low()).isFinite();
    assertThat(forces.path().greatestInPlaneN().high()).isFinite().isNotNegative();
    assertThat(forces.path().z().meanN().likely()).isFinite();
    forces.heaviestRevolution(36).forEach(s -> assertThat(s.force().inPlaneN()).isFinite());
  }

  @Test
  void aCutterBesideTheStockHasNoForces() {
    PassFixture beside = PassFixture.pass(50, 4, 10, 42, 0.1);
    assertThat(PassForces.of(ForceInput.of(beside.stock(), beside.cutter(), beside.cut())))
        .isEmpty();
  }
}
