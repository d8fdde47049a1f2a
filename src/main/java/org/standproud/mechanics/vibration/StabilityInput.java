package org.standproud.mechanics.vibration;

import java.util.List;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * A milling cut on a stock that rings.
 *
 * <p>Angles as in {@link DirectionalFactors}; the stock's plate modes are across the feed. The
 * spindle and cutter may add modes along and across the feed.
 *
 * @param acrossFeed modes of the stock at the tool point, normal to its sides
 * @param dampingRatio damping of those modes over critical
 * @param cutterAlong damped modes of cutter and spindle along the feed; empty: taken as rigid
 * @param cutterAcross damped modes of cutter and spindle across the feed; empty: taken as rigid
 * @param tangentialPa tangential cutting force per chip area, Pa
 * @param radialRatio radial over tangential force
 * @param teeth teeth of the cutter
 * @param entryRad where a tooth enters, rad
 * @param exitRad where it leaves, rad
 * @param cutterDiameterM diameter of the cutter, m
 * @param revPerS spindle speed, 1/s
 */
public record StabilityInput(
    List<ModeBand> acrossFeed,
    Band dampingRatio,
    List<DampedMode> cutterAlong,
    List<DampedMode> cutterAcross,
    Band tangentialPa,
    double radialRatio,
    int teeth,
    double entryRad,
    double exitRad,
    double cutterDiameterM,
    double revPerS) {

  /**
   * Damping of a stock in a vise over critical, where nothing was measured: common practice, no
   * source.
   */
  public static final Band USUAL_DAMPING = new Band(0.01, 0.03, 0.05);

  /**
   * Refuses what cannot be judged.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public StabilityInput {
    acrossFeed = List.copyOf(acrossFeed);
    cutterAlong = List.copyOf(cutterAlong);
    cutterAcross = List.copyOf(cutterAcross);
    OutsideValidity.within("modes of the stock", acrossFeed.size(), 1, 50, "");
    OutsideValidity.within("damping ratio", dampingRatio.low(), 1e-4, 0.5, "");
    OutsideValidity.within("damping ratio", dampingRatio.high(), 1e-4, 0.5, "");
    OutsideValidity.within("tangential force coefficient", tangentialPa.low(), 1e6, 1e11, "Pa");
    OutsideValidity.within("tangential force coefficient", tangentialPa.high(), 1e6, 1e11, "Pa");
    OutsideValidity.within("radial force ratio", radialRatio, 0, 3, "");
    OutsideValidity.within("teeth", teeth, 1, 200, "");
    OutsideValidity.within("entry angle", entryRad, 0, Math.PI, "rad");
    OutsideValidity.within("exit angle", exitRad, entryRad, Math.PI, "rad");
    OutsideValidity.within("cutter diameter", cutterDiameterM, 1e-4, 2, "m");
    OutsideValidity.within("spindle speed", revPerS, 1e-2, 1e4, "1/s");
  }
}
