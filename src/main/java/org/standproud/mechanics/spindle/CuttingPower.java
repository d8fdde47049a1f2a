package org.standproud.mechanics.spindle;

import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * Mean power at the cutter from the specific cutting force: P = k_c Q, and its torque T = P / (2 pi
 * n).
 *
 * <p>k_c is that of the mean chip, k_c1.1 h_m^-mc (Kienzle). Mean power says nothing of what the
 * vise must hold: one tooth of a cutter that has less than one tooth in cut pushes several times as
 * hard as the mean.
 *
 * @param powerW mean power at the cutter in W
 * @param torqueNm mean torque at the cutter in N m
 */
public record CuttingPower(Band powerW, Band torqueNm) {

  /**
   * Power from the specific cutting force.
   *
   * @param specificCuttingForcePa k_c at the mean chip in Pa, 10 MPa to 100 GPa
   * @param removalM3PerS Q in m3/s
   * @param speedRevPerS n in 1/s, 0.01 to 10 000
   * @throws OutsideValidity if an input is out of its range
   */
  public static CuttingPower of(
      Band specificCuttingForcePa, Band removalM3PerS, double speedRevPerS) {
    OutsideValidity.within("specific cutting force", specificCuttingForcePa.low(), 1e7, 1e11, "Pa");
    OutsideValidity.within(
        "specific cutting force", specificCuttingForcePa.high(), 1e7, 1e11, "Pa");
    OutsideValidity.within("removal rate", removalM3PerS.low(), 0, 1, "m3/s");
    return ofPower(specificCuttingForcePa.times(removalM3PerS), speedRevPerS);
  }

  /**
   * A power that was got in some other way, with its torque.
   *
   * @param powerW mean power at the cutter in W, not negative
   * @param speedRevPerS n in 1/s, 0.01 to 10 000
   * @throws OutsideValidity if an input is out of its range
   */
  public static CuttingPower ofPower(Band powerW, double speedRevPerS) {
    OutsideValidity.within("spindle speed", speedRevPerS, 0.01, 1e4, "1/s");
    OutsideValidity.within("power at the cutter", powerW.low(), 0, 1e9, "W");
    return new CuttingPower(powerW, powerW.times(1 / (2 * FastMath.PI * speedRevPerS)));
  }
}
