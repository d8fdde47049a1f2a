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
 * @param clamps number of straps, 2 to 20
 * @param forceEachN force of each strap on the work in N
 * @param friction friction of each face, 0.02 to 1
 * @param strapSpanM distance between the outer straps along X in m
 * @param strapToSupportEdgeM distance s to the edge on the positive Y side in m
 * @param strapToAwayEdgeM distance s to the edge on the negative Y side in m
 */
public record TableHold(
    int clamps,
    Band forceEachN,
    Band friction,
    double strapSpanM,
    double strapToSupportEdgeM,
    double strapToAwayEdgeM) {

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
  }

  /**
   * Margins of the hold.
   *
   * @param load force of the cut on the work; its height is the height above the table
   */
  public ClampedMargins under(HoldingLoad load) {
    Band force = forceEachN.times(clamps);
    End low = new End(force.low(), friction.low(), 0, load.adverse(), load);
    End likely = new End(force.likely(), friction.likely(), 0.5, load.likely(), load);
    End high = new End(force.high(), friction.high(), 1, load.favourable(), load);
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
    private final Peaks peaks;
    private final HoldingLoad load;

    End(double force, double mu, double strapPart, Peaks peaks, HoldingLoad load) {
      this.force = force;
      this.mu = mu;
      this.strapPart = strapPart;
      this.peaks = peaks;
      this.load = load;
    }

    double slip() {
      return Margin.of(mu * (1 + strapPart) * force, Math.hypot(along(), across()));
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

    /** Slip with twist and lift, and tip with lift, whichever is less: both linear in the load. */
    double combined() {
      double width = strapToSupportEdgeM + strapToAwayEdgeM;
      double twist = along() * width / 2 + across() * Math.abs(load.xPositionM());
      double grip = Math.hypot(along(), across()) + twist / (strapSpanM / 2);
      double slipping = Margin.of(mu * (1 + strapPart) * force, grip + mu * peaks.upN());
      double up = peaks.upN() * width / 2;
      double h = load.heightAboveJawM();
      return Math.min(
          slipping,
          Math.min(
              Margin.of(force * strapToSupportEdgeM, peaks.towardFixedN() * h + up),
              Margin.of(force * strapToAwayEdgeM, peaks.awayN() * h + up)));
    }

    private double along() {
      return Math.max(peaks.plusXN(), peaks.minusXN());
    }

    private double across() {
      return Math.max(peaks.towardFixedN(), peaks.awayN());
    }
  }
}
