package org.standproud.mechanics.holding.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.PivotSelectionRule;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.holding.jaw.BackingHold;
import org.standproud.mechanics.holding.jaw.Bearing;

/**
 * Against a linear program of rigid limit analysis: pressures free at points of both faces,
 * friction within an octagon about the cone, six equations of balance (statics). The program may
 * lay pressure where it likes, also at the ends of the jaws, where friction has twice the arm that
 * it has under even pressure, and so is an upper bound.
 */
class GripLimitTest {

  private static final double N = 20_000;
  private static final double MU = 0.15;
  private static final double HEIGHT = 0.06;
  private static final double THICK = 0.012;
  private static final double GRIP = 0.025;
  private static final double LENGTH = 0.12;

  private static GripLimit grip(double placeM, boolean seated) {
    return grip(placeM, seated, BackingHold.NONE);
  }

  private static GripLimit grip(double placeM, boolean seated, BackingHold behind) {
    Bearing whole = Bearing.wholeFace(GRIP);
    return new GripLimit(
        N,
        MU,
        0,
        HEIGHT,
        placeM,
        THICK,
        GRIP,
        LENGTH,
        whole,
        whole,
        seated,
        false,
        false,
        behind,
        BackingHold.NONE);
  }

  /** By hand: 2 mu N = 6000 N of friction along the jaws at the middle, pitch by its own arm. */
  @Test
  void aPullStraightUpInTheMiddleIsHeldByTheFrictionOfBothFaces() {
    // The pull may stand half a thickness off: 6 mm of 25 mm grip, far from tipping.
    assertThat(grip(0, false).margin(0, 0, 1000)).isCloseTo(6, within(1e-3));
    assertThat(grip(0, true).margin(0, 0, 1000)).isCloseTo(6, within(1e-3));
    assertThat(grip(0, true).margin(0, 0, -1000)).isEqualTo(Margin.GREATEST);
  }

  /**
   * By hand: a block that withstands 800 N at 40 mm takes 32 N m, 32 / HEIGHT more than the jaws
   * toward it; away from it nothing changes.
   */
  @Test
  void aBackingHoldsAPlateThatTipsTowardItAndNotOneThatTipsAway() {
    BackingHold block = new BackingHold(800, 800 * 0.04, 0);
    double bare = grip(0, false).margin(0, 1000, 0);
    double backed = grip(0, false, block).margin(0, 1000, 0);
    assertThat((backed - bare) * 1000).isCloseTo(32 / HEIGHT, within(0.15 * 32 / HEIGHT));
    assertThat(grip(0, false, block).margin(0, -1000, 0))
        .isEqualTo(grip(0, false).margin(0, -1000, 0));
  }

  /** By hand: N g/H = 8333 N toward the fixed jaw; friction may add at most 2 mu N t/2 more. */
  @Test
  void aPushAcrossTipsAtTheRigidLimitAndTheCoupleOfFriction() {
    double rigid = N * GRIP / HEIGHT / 1000;
    double margin = grip(0, false).margin(0, 1000, 0);
    assertThat(margin).isGreaterThan(rigid).isLessThan(rigid * 1.1);
    assertThat(margin)
        .isCloseTo(
            (N * GRIP + MU * THICK * (2 * N + 1000 * margin) / 2) / HEIGHT / 1000, within(.02));
  }

  @Test
  void noForceIsTakenMoreOftenThanByTheLinearProgramAndMostNearlyAsOften() {
    Well19937c random = new Well19937c(20261125);
    List<Double> ratios = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      double[] f = {
        2000 * (random.nextDouble() - .5),
        2000 * (random.nextDouble() - .5),
        1000 * (random.nextDouble() - .5)
      };
      double placeM = random.nextInt(3) * LENGTH / 4;
      double own = grip(placeM, false).margin(f[0], f[1], f[2]);
      double program =
          Math.min(
              Math.min(program(f, placeM, THICK / 2), program(f, -placeM, THICK / 2)),
              Math.min(program(f, placeM, -THICK / 2), program(f, -placeM, -THICK / 2)));
      assertThat(own).isLessThanOrEqualTo(1.01 * program);
      ratios.add(program / own);
    }
    double[] sorted = ratios.stream().mapToDouble(r -> r).sorted().toArray();
    assertThat(sorted[sorted.length / 2]).isLessThan(2.2);
    assertThat(sorted[sorted.length - 1]).isLessThan(4);
  }

  /**
   * Greatest factor on a force at (x, y, HEIGHT) by the program: at each point eight rays about the
   * cone of friction, far enough out to hold all of it, none pulling.
   */
  private static double program(double[] f, double xM, double yM) {
    int along = 3;
    int up = 3;
    int rays = 8;
    int points = 2 * along * up;
    int variables = points * rays + 1;
    double[][] balance = new double[7][variables];
    double friction = MU / Math.cos(Math.PI / rays);
    for (int p = 0; p < points; p++) {
      boolean fixed = p < points / 2;
      int q = p % (points / 2);
      double x = LENGTH * ((double) (q % along) / (along - 1) - .5);
      double z = -GRIP * (q / along) / (up - 1);
      double y = fixed ? THICK / 2 : -THICK / 2;
      for (int ray = 0; ray < rays; ray++) {
        double angle = 2 * Math.PI * ray / rays;
        int at = p * rays + ray;
        add(
            balance,
            at,
            x,
            y,
            z,
            friction * Math.cos(angle),
            fixed ? -1 : 1,
            friction * Math.sin(angle));
        balance[6][at] = fixed ? 0 : 1;
      }
    }
    add(balance, variables - 1, xM, yM, HEIGHT, f[0] / 1000, f[1] / 1000, f[2] / 1000);
    List<LinearConstraint> all = new ArrayList<>();
    for (int e = 0; e < 7; e++) {
      all.add(new LinearConstraint(balance[e], Relationship.EQ, e == 6 ? N / 1000 : 0));
    }
    double[] objective = new double[variables];
    objective[variables - 1] = 1;
    return new SimplexSolver()
        .optimize(
            new MaxIter(5000),
            new LinearObjectiveFunction(objective, 0),
            new LinearConstraintSet(all),
            GoalType.MAXIMIZE,
            PivotSelectionRule.BLAND,
            new NonNegativeConstraint(true))
        .getValue();
  }

  /** One unit of a force (fx, fy, fz) at a place in the six equations; moments about the origin. */
  private static void add(
      double[][] balance, int v, double x, double y, double z, double fx, double fy, double fz) {
    double[] column = {
      fx, fy, fz, 100 * (y * fz - z * fy), 100 * (z * fx - x * fz), 100 * (x * fy - y * fx)
    };
    for (int e = 0; e < 6; e++) {
      balance[e][v] = column[e];
    }
  }
}
