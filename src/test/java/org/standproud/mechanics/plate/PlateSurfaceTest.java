package org.standproud.mechanics.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.standproud.setup.Band;

/** The interpolated plate against the whole solution at the same root and modulus. */
class PlateSurfaceTest {

  private static PlateInput input(double youngPa, double shift, double tilt) {
    return new PlateInput(
        .06,
        .15,
        .008,
        Band.exactly(youngPa),
        .3,
        7850,
        Band.exactly(shift),
        Band.exactly(tilt),
        .12,
        new PlatePoint(.075, .06));
  }

  @Test
  void betweenItsNodesItIsTheWholeSolutionToThreeHundredths() {
    Well19937c random = new Well19937c(3);
    PlateSurface surface = new PlateSurface(input(205e9, 1, 1));
    double[] corner = new double[1 + 2 * PlateSurface.MODES];
    for (int i = 0; i < 40; i++) {
      double young = 180e9 + 40e9 * random.nextDouble();
      double shift = Math.pow(10, 8 + 2.5 * random.nextDouble());
      double tilt = Math.pow(10, 3 + 3.5 * random.nextDouble());
      surface.at(young, 1 / shift, 1 / tilt, 0, corner);
      PlateResponse whole = PlateResponse.of(input(young, shift, tilt));
      assertThat(corner[0])
          .isCloseTo(whole.flexibilityAtCornerMPerN().likely(), withinPercentage(3));
      double first = Double.POSITIVE_INFINITY;
      for (int m = 1; m <= PlateSurface.MODES; m++) {
        first = Math.min(first, corner[m]);
      }
      assertThat(first).isCloseTo(whole.frequenciesHz().get(0).likely(), withinPercentage(3));
    }
  }

  @Test
  void itFollowsTheDepthAboutWhichTheRootTurns() {
    Well19937c random = new Well19937c(5);
    PlateInput stock = input(205e9, 1, 1);
    PlateSurface surface = new PlateSurface(stock);
    PlateOnFoot plate = PlateOnFoot.of(stock);
    PlateOnFoot.Place corner = plate.place(stock.load());
    double[] numbers = new double[1 + 2 * PlateSurface.MODES];
    double[] whole = new double[1 + 2 * PlateSurface.MODES];
    for (int i = 0; i < 40; i++) {
      double young = 180e9 + 40e9 * random.nextDouble();
      double shift = Math.pow(10, -10.5 + 2.5 * random.nextDouble());
      double turn = Math.pow(10, -6.5 + 3.5 * random.nextDouble());
      double depth = .02 * random.nextDouble();
      surface.at(young, shift, turn, depth, numbers);
      plate.seen(corner, young, 7850, RootStiffness.turningAbout(shift, turn, depth), whole);
      for (int k : new int[] {0, 1, 1 + PlateSurface.MODES}) {
        assertThat(numbers[k]).isCloseTo(whole[k], withinPercentage(4));
      }
    }
  }

  @Test
  void aDeeperTurningPointGivesMoreAndRingsLower() {
    PlateSurface surface = new PlateSurface(input(205e9, 1, 1));
    double[] numbers = new double[1 + 2 * PlateSurface.MODES];
    double give = 0;
    double hz = Double.POSITIVE_INFINITY;
    for (double depth = 0; depth < .025; depth += .005) {
      surface.at(205e9, 1e-10, 1e-5, depth, numbers);
      assertThat(numbers[0]).isGreaterThan(give);
      assertThat(numbers[1]).isLessThan(hz);
      give = numbers[0];
      hz = numbers[1];
    }
  }

  /** Statics and the pendulum formula of a rigid body on a turning spring. */
  @Test
  void onAHingeItSwingsAsARigidBody() {
    PlateSurface surface = new PlateSurface(input(205e9, 1, 1));
    double[] numbers = new double[1 + 2 * PlateSurface.MODES];
    for (double turn = 1e-2; turn < 1e4; turn *= 10) {
      surface.at(205e9, 1e-12, turn, .01, numbers);
      double mass = 7850 * .008 * .06 * .15;
      double inertia = mass * (.07 * .07 * .07 - .01 * .01 * .01) / (3 * .06);
      double spring = .12 / turn;
      double hz = Math.sqrt(spring / inertia) / (2 * Math.PI);
      assertThat(numbers[0]).isCloseTo(.07 * .07 / spring, withinPercentage(4));
      assertThat(numbers[1]).isCloseTo(hz, withinPercentage(4));
    }
  }
}
