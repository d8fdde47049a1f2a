package org.standproud.mechanics.holding.other;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.mechanics.holding.slip.Margin;
import org.standproud.setup.Band;

/**
 * Stock strapped flat on the table; own model, from statics.
 *
 * <p>The straps press with N in all. Friction: the table face carries {@code mu (N - up)}; the face
 * under the straps another {@code mu N} at best and half of that likely, since a strap can swing,
 * and nothing at worst. Twist of {@code Fx} off the straps' line and {@code Fy} off the middle is
 * {@code Fx b/2 + Fy |x|} and is taken over half the span of the straps. Tip about an edge at
 * distance {@code s} from the line of straps: {@code N s} against {@code F h + up b/2}, where h is
 * the height of the cut above the table and b the width across.
 *
 * <p>A fence bolted down along the edge on the positive Y side takes a push toward it up to what
 * its own bolts hold by friction, opposite to the push wherever that is; a stop bolted at each end
 * beside the cut takes a push along X the same way, 10 mm off its line. Only what is left over
 * slips and twists, so that with {@code X = max(0, m Fx - stop)} and {@code Y = max(0, m Fy -
 * fence)} the straps hold {@code sqrt(X^2 + Y^2) + (X b/2 + Y |x| + min(m Fx, stop) 10 mm)/(span/2)
 * + m mu up}. Nothing takes a push away from the fence but the straps. Neither helps against tip:
 * they touch the stock anywhere on its edge.
 *
 * @param clamps number of straps, 2 to 20
 * @param forceEachN force of each strap on the work in N
 * @param friction friction of each face, 0.02 to 1
 * @param strapSpanM distance between the outer straps along X in m
 * @param strapToSupportEdgeM distance s to the edge on the positive Y side in m
 * @param strapToAwayEdgeM distance s to the edge on the negative Y side in m
 * @param fenceN push toward positive Y that the fence takes in N; zero without one
 * @param stopN push along X that the stop at either end takes in N; zero without them
 */
public record TableHold(
    int clamps,
    Band forceEachN,
    Band friction,
    double strapSpanM,
    double strapToSupportEdgeM,
    double strapToAwayEdgeM,
    Band fenceN,
    Band stopN) {

  private static final int HALVINGS = 80;

  /** A stop touches the end of the stock so far beside the line of the cut. */
  private static final double STOP_BESIDE_CUT_M = 0.01;

  /**
   * Refuses a hold out of range.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public TableHold {
    within("number of clamps", clamps, 2, 20, "");
    within("force of a clamp", forceEachN.low(), 1, 1e6 / clamps, "N");
    within("friction at the table", friction.low(), 0.02, 1, "");
    within("friction at the table", friction.high(), 0.02, 1, "");
    within("span of the straps", strapSpanM, 1e-3, 5, "m");
    within("strap to edge", strapToSupportEdgeM, 0, 2, "m");
    within("strap to edge", strapToAwayEdgeM, 0, 2, "m");
    within("push on the fence", fenceN.low(), 0, 1e6, "N");
    within("push on a stop", stopN.low(), 0, 1e6, "N");
  }

  /** A hold by straps alone. */
  public TableHold(
      int clamps,
      Band forceEachN,
      Band friction,
      double strapSpanM,
      double strapToSupportEdgeM,
      double strapToAwayEdgeM) {
    this(
        clamps,
        forceEachN,
        friction,
        strapSpanM,
        strapToSupportEdgeM,
        strapToAwayEdgeM,
        Band.exactly(0),
        Band.exactly(0));
  }

  /**
   * Push that a bar bolted to the table takes by friction under it, N.
   *
   * @param bolts number of bolts, 1 to 20
   * @param boltN force of each bolt in N
   * @param friction friction under the bar
   */
  public static Band bolted(int bolts, Band boltN, Band friction) {
    within("number of bolts", bolts, 1, 20, "");
    return boltN.times(friction).times(bolts);
  }

  /**
   * Margins of the hold.
   *
   * @param load force of the cut on the work; its height is the height above the table
   */
  public ClampedMargins under(HoldingLoad load) {
    Band force = forceEachN.times(clamps);
    End low =
        new End(force.low(), friction.low(), 0, fenceN.low(), stopN.low(), load.adverse(), load);
    End likely =
        new End(
            force.likely(),
            friction.likely(),
            0.5,
            fenceN.likely(),
            stopN.likely(),
            load.likely(),
            load);
    End high =
        new End(
            force.high(), friction.high(), 1, fenceN.high(), stopN.high(), load.favourable(), load);
    return new ClampedMargins(
        Band.spanning(likely.slip(), low.slip(), high.slip()),
        Band.spanning(likely.lift(), low.lift(), high.lift()),
        Band.spanning(likely.toward(), low.toward(), high.toward()),
        Band.spanning(likely.away(), low.away(), high.away()),
        Band.spanning(likely.combined(), low.combined(), high.combined()));
  }

  /** One end of the bands; {@code strapPart} is the part of the strap faces' friction counted. */
  private final class End {
    private final double force;
    private final double mu;
    private final double strapPart;
    private final double fence;
    private final double stop;
    private final Peaks peaks;
    private final HoldingLoad load;

    End(
        double force,
        double mu,
        double strapPart,
        double fence,
        double stop,
        Peaks peaks,
        HoldingLoad load) {
      this.force = force;
      this.mu = mu;
      this.strapPart = strapPart;
      this.fence = fence;
      this.stop = stop;
      this.peaks = peaks;
      this.load = load;
    }

    double slip() {
      return slipping(false);
    }

    double lift() {
      return Margin.of(force, peaks.upN());
    }

    double toward() {
      return Margin.of(force * strapToSupportEdgeM, peaks.towardFixedN() * load.heightAboveJawM());
    }

    double away() {
      return Margin.of(force * strapToAwayEdgeM, peaks.awayN() * load.heightAboveJawM());
    }

    /** Slip with twist and lift, and tip with lift, whichever is less. */
    double combined() {
      double up = peaks.upN() * widthM() / 2;
      double h = load.heightAboveJawM();
      return Math.min(
          slipping(true),
          Math.min(
              Margin.of(force * strapToSupportEdgeM, peaks.towardFixedN() * h + up),
              Margin.of(force * strapToAwayEdgeM, peaks.awayN() * h + up)));
    }

    private double widthM() {
      return strapToSupportEdgeM + strapToAwayEdgeM;
    }

    private double slipping(boolean twisted) {
      return Math.min(
          slipping(peaks.towardFixedN(), fence, twisted), slipping(peaks.awayN(), 0, twisted));
    }

    /**
     * The factor on the load at which what fence and stop leave over slips: it rises steadily with
     * the factor, so the factor is found by halving.
     */
    private double slipping(double across, double fenceHolds, boolean twisted) {
      double held = mu * (1 + strapPart) * force;
      double low = 0;
      double high = Margin.GREATEST;
      if (leftOver(high, across, fenceHolds, twisted) <= held) {
        return high;
      }
      for (int i = 0; i < HALVINGS; i++) {
        double middle = (low + high) / 2;
        if (leftOver(middle, across, fenceHolds, twisted) <= held) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return low;
    }

    private double leftOver(double factor, double across, double fenceHolds, boolean twisted) {
      double x = Math.max(0, factor * along() - stop);
      double y = Math.max(0, factor * across - fenceHolds);
      if (!twisted) {
        return Math.hypot(x, y);
      }
      double stopped = Math.min(factor * along(), stop);
      double twist =
          x * widthM() / 2 + y * Math.abs(load.xPositionM()) + stopped * STOP_BESIDE_CUT_M;
      return Math.hypot(x, y) + twist / (strapSpanM / 2) + factor * mu * peaks.upN();
    }

    private double along() {
      return Math.max(peaks.plusXN(), peaks.minusXN());
    }
  }
}
