package org.standproud.mechanics.cutter;

import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;

/**
 * Radial chip thinning of a side cut.
 *
 * <p>With r = a_e / D below one half the thickest chip is h_max = 2 f_z sin(kappa) sqrt(r (1 - r)),
 * so the feed may be raised by 1 / (2 sqrt(r (1 - r))) for the same chip; from one half on the
 * factor is 1. Geometry of the circular tooth path (Altintas, Manufacturing Automation, 2nd ed.
 * 2012, ch. 2, from memory). It is true of a side cut only, whose arc ends on the feed line: a
 * narrow stock under the middle of a face mill is cut at full thickness.
 */
public final class ChipThinning {

  private ChipThinning() {}

  /**
   * What the feed may be multiplied by for the same thickest chip, at least 1.
   *
   * @param radialRatio a_e / D, 0.001 to 1
   * @throws OutsideValidity if the ratio is out of its range
   */
  public static double multiplier(double radialRatio) {
    OutsideValidity.within("radial depth over diameter", radialRatio, 0.001, 1, "");
    return radialRatio >= 0.5 ? 1 : 1 / (2 * FastMath.sqrt(radialRatio * (1 - radialRatio)));
  }

  /**
   * Thickest chip of a side cut in m.
   *
   * @param feedPerToothM f_z in m, 0 to 0.01
   * @param radialRatio a_e / D, 0.001 to 1
   * @param enteringAngleRad kappa in rad, 0.05 to 1.75 (100 degrees)
   * @throws OutsideValidity if an input is out of its range
   */
  public static double thickestChipM(
      double feedPerToothM, double radialRatio, double enteringAngleRad) {
    OutsideValidity.within("feed per tooth", feedPerToothM, 0, 0.01, "m");
    OutsideValidity.within("entering angle", enteringAngleRad, 0.05, 1.75, "rad");
    return feedPerToothM * FastMath.sin(enteringAngleRad) / multiplier(radialRatio);
  }
}
