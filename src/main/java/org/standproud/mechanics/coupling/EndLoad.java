package org.standproud.mechanics.coupling;

import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.force.AxisForce;
import org.standproud.mechanics.force.PathForces;
import org.standproud.mechanics.force.PathPeaks;
import org.standproud.mechanics.holding.jaw.JawSpan;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;
import org.standproud.setup.request.RequestFields;

/**
 * What a pass asks of the hold: its forces at an upper end of the stock, where their lever is
 * longest. Across the jaws a part of the greater push is asked of the hold the other way too, for a
 * plate that is struck and let go springs back.
 */
public final class EndLoad {

  /** What is taken for the springing back. */
  public static final Assumption REBOUND =
      new Assumption(
          RequestFields.CUT,
          "a plate struck and let go pushes back with a fifth of the greatest push across the jaws",
          "common practice, no source");

  /** Part of the push one way across the jaws that the hold must bear the other way. */
  private static final double REBOUND_SHARE = 0.2;

  private EndLoad() {}

  /**
   * The load of a pass.
   *
   * @param path its forces
   * @param setup where it is milled
   */
  public static HoldingLoad of(PathForces path, Setup setup) {
    return at(setup, path.x(), sprungBack(path.y()), path.z());
  }

  /**
   * The place of the load of a set-up, with no force yet.
   *
   * @param setup where it is milled
   */
  public static HoldingLoad place(Setup setup) {
    AxisForce none = new AxisForce(Band.exactly(0), Band.exactly(0), Band.exactly(0));
    return at(setup, none, none, none);
  }

  /**
   * The greatest force each way of a pass at single values of all that is a band.
   *
   * @param path its extremes
   */
  public static Peaks peaks(PathPeaks path) {
    return Peaks.of(
        path.leastXN(),
        path.greatestXN(),
        sprungBack(path.leastYN(), path.greatestYN()),
        -sprungBack(-path.greatestYN(), -path.leastYN()),
        path.leastZN(),
        path.greatestZN());
  }

  /** Least force with what the greatest one the other way springs back, in N. */
  private static double sprungBack(double leastN, double greatestN) {
    return Math.min(leastN, -REBOUND_SHARE * greatestN);
  }

  private static AxisForce sprungBack(AxisForce y) {
    Band least = y.leastN();
    Band greatest = y.greatestN();
    return new AxisForce(
        sprungBack(greatest.times(-1), least.times(-1)).times(-1),
        y.meanN(),
        sprungBack(least, greatest));
  }

  private static Band sprungBack(Band leastN, Band greatestN) {
    return new Band(
        sprungBack(leastN.low(), greatestN.high()),
        sprungBack(leastN.likely(), greatestN.likely()),
        sprungBack(leastN.high(), greatestN.low()));
  }

  private static HoldingLoad at(Setup setup, AxisForce x, AxisForce y, AxisForce z) {
    return new HoldingLoad(
        x.leastN(),
        x.greatestN(),
        y.leastN(),
        y.greatestN(),
        z.leastN(),
        z.greatestN(),
        setup.stickOutM(),
        JawSpan.farEndM(setup.hold(), setup.stock().lengthM()),
        setup.stock().thicknessM() / 2);
  }
}
