package org.standproud.mechanics.spindle;

import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;

/**
 * The power method of Machinery's Handbook: P_c = K_p C Q W.
 *
 * <p>K_p is power per removal rate (a pressure: 1 kW s/cm3 is 1 GPa); table 1b, 31st ed. p. 1147.
 * The feed factor C, from memory of the same chapter, is 1 at 0.012 in a tooth and linear between
 * its rows; W is 1.0 for a sharp cutter, 1.10 for end and slab milling, up to 1.60 for heavy face
 * milling, from memory. A second opinion beside the Kienzle power.
 */
public final class UnitPower {

  private static final double INCH_M = 0.0254;

  private static final double[] FEED_INCH = {
    .001, .002, .003, .004, .005, .006, .008, .010, .012, .015, .020, .030
  };

  private static final double[] FEED_FACTOR = {
    1.60, 1.40, 1.30, 1.25, 1.19, 1.15, 1.08, 1.04, 1.00, .96, .90, .83
  };

  private UnitPower() {}

  /**
   * Feed factor C.
   *
   * @param feedPerToothM f_z in m, 0.0254 to 0.762 mm (0.001 to 0.030 in)
   * @throws OutsideValidity if the feed lies outside the table
   */
  public static double feedFactor(double feedPerToothM) {
    OutsideValidity.within("feed per tooth", feedPerToothM, .001 * INCH_M, .030 * INCH_M, "m");
    double inch = FastMath.max(FEED_INCH[0], FastMath.min(feedPerToothM / INCH_M, .030));
    return new LinearInterpolator().interpolate(FEED_INCH, FEED_FACTOR).value(inch);
  }

  /**
   * Power at the cutter in W.
   *
   * @param unitPowerPa K_p in Pa (W s/m3), 0.1 to 20 GPa
   * @param feedPerToothM f_z in m, within the table
   * @param removalM3PerS Q in m3/s, 0 to 1
   * @param wearFactor W, 1 to 2
   * @throws OutsideValidity if an input is out of its range
   */
  public static double powerW(
      double unitPowerPa, double feedPerToothM, double removalM3PerS, double wearFactor) {
    OutsideValidity.within("unit power", unitPowerPa, 1e8, 2e10, "Pa");
    OutsideValidity.within("removal rate", removalM3PerS, 0, 1, "m3/s");
    OutsideValidity.within("wear factor", wearFactor, 1, 2, "");
    return unitPowerPa * feedFactor(feedPerToothM) * removalM3PerS * wearFactor;
  }
}
