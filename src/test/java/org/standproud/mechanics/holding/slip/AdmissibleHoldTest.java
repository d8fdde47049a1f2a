package org.standproud.mechanics.holding.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.holding.jaw.Bearing;
import org.standproud.mechanics.holding.jaw.RigidLimits;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.mechanics.published.KnownLimit;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.Subject;
import org.standproud.setup.Band;

/** The combined margin against an independent linear programme: own comparison, no source. */
class AdmissibleHoldTest {

  private static final long SEED = 20261125;

  private record Trial(JawGrip grip, AdmissibleHold lp, HoldingLoad load, Peaks peaks) {

    double ours() {
      return grip.combinedMargin(load, peaks);
    }

    double admissible() {
      double least = Margin.GREATEST;
      for (double fx : new double[] {peaks.plusXN(), -peaks.minusXN()}) {
        for (double fy : new double[] {peaks.towardFixedN(), -peaks.awayN()}) {
          for (double fz : new double[] {peaks.upN(), -peaks.downN()}) {
            for (double side : new double[] {-1, 1}) {
              double[] place = {
                load.xPositionM(), side * load.offCentreYM(), load.heightAboveJawM()
              };
              least = Math.min(least, lp.factor(new double[] {fx, fy, fz}, place));
            }
          }
        }
      }
      return least;
    }
  }

  private static Trial trial(Well19937c random) {
    double grip = 0.005 + 0.03 * random.nextDouble();
    double height = 0.01 + 0.08 * random.nextDouble();
    double clamp = 3e3 * Math.pow(10, random.nextDouble());
    double length = 0.04 + 0.11 * random.nextDouble();
    double thickness = 0.004 + 0.02 * random.nextDouble();
    boolean wire = random.nextBoolean();
    double depth = grip * (0.2 + 0.6 * random.nextDouble());
    Bearing movable = wire ? Bearing.lineAt(depth) : Bearing.wholeFace(grip);
    RigidLimits limits = new RigidLimits(movable, Bearing.wholeFace(grip), height, 0);
    JawGrip jaws =
        new JawGrip(
            clamp,
            0.08 + 0.2 * random.nextDouble(),
            limits.towardFixedN(clamp),
            limits.awayN(clamp),
            length,
            thickness,
            grip,
            random.nextBoolean(),
            random.nextInt(4) == 0,
            random.nextInt(4) == 0);
    Peaks peaks =
        new Peaks(
            500 * random.nextDouble(),
            500 * random.nextDouble(),
            400 * random.nextDouble(),
            400 * random.nextDouble(),
            200 * random.nextDouble(),
            200 * random.nextDouble());
    Band none = Band.exactly(0);
    HoldingLoad load =
        new HoldingLoad(
            none,
            none,
            none,
            none,
            none,
            none,
            height,
            length * 0.6 * random.nextDouble(),
            thickness / 2 * random.nextDouble());
    AdmissibleHold lp = new AdmissibleHold(jaws, movable.shallowestM(), movable.deepestM());
    return new Trial(jaws, lp, load, peaks);
  }

  @Tag(PublishedTable.TESTS)
  @Test
  void theCombinedMarginIsNeverMoreThanSomeDistributionCanCarry() {
    Well19937c random = new Well19937c(SEED);
    double[] ratios = new double[150];
    for (int i = 0; i < ratios.length; i++) {
      Trial trial = trial(random);
      double ours = trial.ours();
      double admissible = trial.admissible();
      assertThat(ours).as("%s", trial).isLessThanOrEqualTo(admissible * (1 + 1e-6));
      ratios[i] = ours / admissible;
    }
    Arrays.sort(ratios);
    double middle = ratios[ratios.length / 2];
    KnownLimit.flagged(
        Subject.HOLDING,
        "The combined margin is a lower bound from one kind of pressure distribution",
        "an independent linear programme over all admissible distributions finds 1.4 to 6.6 times"
            + " as much, 2.8 times in the middle of 150 random grips",
        middle > 0.34 && middle < 0.38 && ratios[0] > 0.15 && ratios[ratios.length - 1] < 0.73);
  }

  /** Pure pull along the jaws at their middle: 2 mu N, statics. */
  @Test
  void thePlainPullIsTwiceFrictionTimesForce() {
    JawGrip jaws = new JawGrip(10e3, 0.15, 1e6, 1e6, 0.1, 0.01, 0.02, false, false, false);
    double factor =
        new AdmissibleHold(jaws, 0, 0.02)
            .factor(new double[] {1000, 0, 0}, new double[] {0, 0, -0.01});
    assertThat(factor).isCloseTo(3, within(1e-6));
  }
}
