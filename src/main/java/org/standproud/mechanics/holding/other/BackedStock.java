package org.standproud.mechanics.holding.other;

import org.standproud.mechanics.holding.jaw.Bearing;
import org.standproud.mechanics.holding.jaw.RigidLimits;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.mechanics.holding.slip.JawGrip;
import org.standproud.mechanics.holding.slip.Margin;
import org.standproud.setup.Band;

/**
 * Statics of stock pressed by clamps against an upright backing: the clamps are a line at one depth
 * below the top of the backing and the backing is a face on the positive Y side. A strap can swing,
 * so only friction at the backing counts: half of what two jaws would give. Own model.
 */
record BackedStock(
    Band forceN,
    Band friction,
    double clampDepthM,
    double backedHeightM,
    Bearing surely,
    Bearing atBest,
    double lengthM,
    double thicknessM,
    boolean seated) {

  ClampedMargins under(HoldingLoad load) {
    End low = new End(forceN.low(), friction.low(), load.adverse(), surely, load);
    End likely = new End(forceN.likely(), friction.likely(), load.likely(), surely, load);
    End high = new End(forceN.high(), friction.high(), load.favourable(), atBest, load);
    return new ClampedMargins(
        Band.spanning(likely.slip(), low.slip(), high.slip()),
        Band.spanning(likely.lift(), low.lift(), high.lift()),
        Band.spanning(likely.toward(), low.toward(), high.toward()),
        Band.spanning(likely.away(), low.away(), high.away()),
        Band.spanning(likely.combined(), low.combined(), high.combined()));
  }

  /** One end of the bands. */
  private final class End {
    private final Peaks peaks;
    private final HoldingLoad load;
    private final double towardN;
    private final double awayN;
    private final JawGrip grip;

    End(double force, double mu, Peaks peaks, Bearing backing, HoldingLoad load) {
      this.peaks = peaks;
      this.load = load;
      RigidLimits limits =
          new RigidLimits(Bearing.lineAt(clampDepthM), backing, load.heightAboveJawM(), 0);
      this.towardN = limits.towardFixedN(force);
      this.awayN = limits.awayN(force);
      this.grip =
          new JawGrip(
              force,
              mu / 2,
              towardN,
              awayN,
              lengthM,
              thicknessM,
              backedHeightM,
              seated,
              false,
              false);
    }

    double slip() {
      return grip.slipMargin(peaks);
    }

    double lift() {
      return grip.liftMargin(peaks);
    }

    double toward() {
      return Margin.of(towardN, peaks.towardFixedN());
    }

    double away() {
      return Margin.of(awayN, peaks.awayN());
    }

    double combined() {
      return grip.combinedMargin(load, peaks);
    }
  }
}
