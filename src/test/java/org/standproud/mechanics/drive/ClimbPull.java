package org.standproud.mechanics.drive;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * Pull of a climb side cut on the table, in closed form.
 *
 * <p>A tooth at phi (from the normal to the feed, entry phi_st = acos(2 a_e/D - 1), exit pi) with
 * the chip f_z sin(phi) pulls the work along the table's own motion with a_p f_z K_tc sin(phi)
 * (-cos(phi) - k_r sin(phi)), k_r = F_r/F_t. Its mean over a turn is F = (N a_p f_z K_tc / 2 pi) (A
 * - k_r B), A = sin^2(phi_st) / 2, B = (pi - phi_st) / 2 + sin(2 phi_st) / 4; the table is pulled
 * on the mean when k_r is below A/B. Straight edges, no run-out, no edge force. Own derivation from
 * the force convention of Altintas, Manufacturing Automation, 2nd ed. 2012, ch. 2; no measured pull
 * was found.
 *
 * @param teeth N, 1 to 200
 * @param axialDepthM a_p in m, 0 to 0.5
 * @param feedPerToothM f_z in m, 0 to 0.01
 * @param radialRatio a_e/D, 0.001 to 1
 */
public record ClimbPull(int teeth, double axialDepthM, double feedPerToothM, double radialRatio) {

  /**
   * Refuses what is no side cut.
   *
   * @throws OutsideValidity if a value is out of its range
   */
  public ClimbPull {
    OutsideValidity.within("teeth", teeth, 1, 200, "");
    OutsideValidity.within("axial depth", axialDepthM, 0, 0.5, "m");
    OutsideValidity.within("feed per tooth", feedPerToothM, 0, 0.01, "m");
    OutsideValidity.within("radial depth over diameter", radialRatio, 0.001, 1, "");
  }

  /** F_r/F_t below which the mean of the cut pulls the table along; not negative. */
  public double radialForceRatioLimit() {
    return FastMath.max(0, tangentialShare() / radialShare());
  }

  /**
   * Mean pull over a turn in N, positive with the table's motion.
   *
   * @param tangentialPa K_tc in Pa, not negative
   * @param radialRatioOfForce k_r = F_r/F_t, 0 to 3
   * @throws OutsideValidity if an input is out of its range
   */
  public Band meanN(Band tangentialPa, Band radialRatioOfForce) {
    double perPascal = teeth * axialDepthM * feedPerToothM / (2 * FastMath.PI);
    return scaled(
        tangentialPa,
        radialRatioOfForce,
        kr -> perPascal * (tangentialShare() - kr * radialShare()));
  }

  /**
   * Greatest pull of one tooth in N, at {@link #angleOfGreatestPullRad}; not negative.
   *
   * @param tangentialPa K_tc in Pa, not negative
   * @param radialRatioOfForce k_r = F_r/F_t, 0 to 3
   * @throws OutsideValidity if an input is out of its range
   */
  public Band greatestOfOneToothN(Band tangentialPa, Band radialRatioOfForce) {
    return scaled(
        tangentialPa,
        radialRatioOfForce,
        kr -> {
          double phi = angleOfGreatestPullRad(kr);
          double along = -FastMath.cos(phi) - kr * FastMath.sin(phi);
          return FastMath.max(0, axialDepthM * feedPerToothM * FastMath.sin(phi) * along);
        });
  }

  /**
   * Where one tooth pulls hardest, in rad.
   *
   * @param kr F_r/F_t, not negative
   */
  public double angleOfGreatestPullRad(double kr) {
    double free = FastMath.PI - FastMath.atan2(1, kr) / 2;
    return FastMath.max(entryRad(), free);
  }

  private double entryRad() {
    return FastMath.acos(2 * radialRatio - 1);
  }

  private double tangentialShare() {
    return FastMath.pow(FastMath.sin(entryRad()), 2) / 2;
  }

  private double radialShare() {
    return (FastMath.PI - entryRad()) / 2 + FastMath.sin(2 * entryRad()) / 4;
  }

  private static Band scaled(Band tangentialPa, Band kr, DoubleUnaryOperator perPascal) {
    OutsideValidity.within("tangential coefficient", tangentialPa.low(), 0, 1e11, "Pa");
    OutsideValidity.within("tangential coefficient", tangentialPa.high(), 0, 1e11, "Pa");
    OutsideValidity.within("radial over tangential force", kr.low(), 0, 3, "");
    OutsideValidity.within("radial over tangential force", kr.high(), 0, 3, "");
    double atLow = perPascal.applyAsDouble(kr.low());
    double atHigh = perPascal.applyAsDouble(kr.high());
    return Band.spanning(
        tangentialPa.likely() * perPascal.applyAsDouble(kr.likely()),
        tangentialPa.low() * atLow,
        tangentialPa.low() * atHigh,
        tangentialPa.high() * atLow,
        tangentialPa.high() * atHigh);
  }
}
