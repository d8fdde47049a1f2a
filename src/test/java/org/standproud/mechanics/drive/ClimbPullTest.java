package org.standproud.mechanics.drive;

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
import org.standproud.setup.FeedDirection;

class ClimbPullTest {

  private static final PublishedTable PULL =
      new PublishedTable(
          Subject.DRIVE,
          "self-feed criterion from the forces of Altintas 2012 ch. 2 (from memory)",
          SourceTag.DERIVED);

  private static final Band KT = Band.exactly(1700e6);
  private static final Band KR = Band.exactly(.3);

  /** A/B of the self-feed criterion [derived], forces as in Altintas 2012 ch. 2 [memory]. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "a_e/D {0}: pulled along below F_r/F_t {1} [derived]")
  @CsvSource({".05, 3.2354", ".1, 2.2018", ".25, 1.2211", ".5, .6366", ".75, .2967", "1, 0"})
  void aLightClimbCutPullsTheTableAndASlotDoesNot(double ratio, double limit) {
    ClimbPull cut = new ClimbPull(4, .003, .08e-3, ratio);
    PULL.row("climb, a_e/D " + ratio)
        .figure("F_r/F_t limit", "", limit, cut.radialForceRatioLimit(), 5e-5);
  }

  /** N 4, a_p 3, f_z .08, K_t 1700 MPa, k_r .3, a_e/D .25 [derived]. */
  @Tag(PublishedTable.TESTS)
  @Test
  void theMeanPullIsAboutHalfThePullOfOneTooth() {
    ClimbPull cut = new ClimbPull(4, .003, .08e-3, .25);

    double angle = FastMath.toDegrees(cut.angleOfGreatestPullRad(.3));
    PULL.row("N 4, a_p 3, f_z .08, K_t 1700 MPa, k_r .3, a_e/D .25")
        .figure("mean pull", "N", 73.5, cut.meanN(KT, KR).likely(), .05)
        .figure("pull of one tooth", "N", 151.8, cut.greatestOfOneToothN(KT, KR).likely(), .05)
        .figure("at angle", "deg", 143.35, angle, .005);
  }

  @Property
  void theClosedFormIsTheMeanOfTheForceOverATurn(
      @ForAll @Scale(4) @DoubleRange(min = .01, max = 1) double ratio,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 1) double kr) {
    ClimbPull cut = new ClimbPull(3, .002, .1e-3, ratio);
    double oneTurn =
        new RombergIntegrator()
            .integrate(
                1_000_000,
                phi ->
                    .002
                        * .1e-3
                        * 1e9
                        * FastMath.sin(phi)
                        * (-FastMath.cos(phi) - kr * FastMath.sin(phi)),
                FastMath.acos(2 * ratio - 1),
                FastMath.PI);

    assertThat(cut.meanN(Band.exactly(1e9), Band.exactly(kr)).likely())
        .isCloseTo(3 * oneTurn / (2 * FastMath.PI), within(1e-4));
  }

  @Property
  void noToothPullsHarderThanTheGreatestPull(
      @ForAll @Scale(4) @DoubleRange(min = .01, max = 1) double ratio,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 1) double kr,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 1) double share) {
    double entry = FastMath.acos(2 * ratio - 1);
    double phi = entry + share * (FastMath.PI - entry);
    double pull =
        .002 * .1e-3 * 1e9 * FastMath.sin(phi) * (-FastMath.cos(phi) - kr * FastMath.sin(phi));

    assertThat(pull)
        .isLessThanOrEqualTo(
            new ClimbPull(3, .002, .1e-3, ratio)
                    .greatestOfOneToothN(Band.exactly(1e9), Band.exactly(kr))
                    .likely()
                + 1e-9);
  }

  /**
   * The force on the work along X is F_t cos(phi) + F_r sin(phi), opposite to that on the tool of
   * Altintas 2012 ch. 2 [memory], phi clockwise from +Y and the cutter fed toward +X. Climb runs
   * from phi_st to pi, conventional from 0 to pi - phi_st.
   */
  @Test
  void climbPullsTheTableAndConventionalOpposesItInTheFrameOfTheVise() {
    ClimbPull closed = new ClimbPull(1, .003, .08e-3, .25);
    double entry = FastMath.acos(-.5);

    TablePull climb = pullOverArc(entry, FastMath.PI);
    TablePull conventional = pullOverArc(0, FastMath.PI - entry);

    assertThat(climb.meanN().likely()).isCloseTo(closed.meanN(KT, KR).likely(), within(1e-3));
    assertThat(climb.greatestWithN().likely())
        .isCloseTo(closed.greatestOfOneToothN(KT, KR).likely(), within(1e-3));
    assertThat(conventional.meanN().likely()).isNegative();
    assertThat(conventional.greatestWithN().likely()).isZero();
    assertThat(conventional.greatestAgainstN().likely()).isPositive();
  }

  private static TablePull pullOverArc(double fromRad, double toRad) {
    int steps = 20_000;
    double least = 0;
    double greatest = 0;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double phi = fromRad + (i + .5) * (toRad - fromRad) / steps;
      double tangential = .003 * .08e-3 * 1700e6 * FastMath.sin(phi);
      double onWorkX = tangential * (FastMath.cos(phi) + .3 * FastMath.sin(phi));
      least = FastMath.min(least, onWorkX);
      greatest = FastMath.max(greatest, onWorkX);
      sum += onWorkX;
    }
    double mean = sum * (toRad - fromRad) / steps / (2 * FastMath.PI);
    return TablePull.of(
        FeedDirection.PLUS_X, Band.exactly(least), Band.exactly(mean), Band.exactly(greatest));
  }

  @Test
  void anUncertainForceRatioWidensThePullAcrossZero() {
    Band pull = new ClimbPull(4, .003, .08e-3, .5).meanN(KT, new Band(.3, .5, .8));
    assertThat(pull.low()).isNegative();
    assertThat(pull.high()).isPositive();
  }

  @Test
  void aCutWiderThanTheCutterIsRefused() {
    assertThatThrownBy(() -> new ClimbPull(4, .003, .08e-3, 1.2))
        .isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(() -> new ClimbPull(0, .003, .08e-3, .5))
        .isInstanceOf(OutsideValidity.class);
  }
}
