package org.standproud.mechanics.force;

import org.standproud.mechanics.OutsideValidity;

/**
 * Mechanistic coefficients of one stock and one cutter.
 *
 * @param tangentialChipPa K_tc in Pa
 * @param tangentialEdgeNPerM K_te in N/m
 * @param radialChipPa K_rc in Pa
 * @param radialEdgeNPerM K_re in N/m
 * @param axialChipPa K_ac in Pa, positive where the chip pulls the cutter out of its holder
 * @param axialEdgeNPerM K_ae in N/m
 */
public record CuttingCoefficients(
    double tangentialChipPa,
    double tangentialEdgeNPerM,
    double radialChipPa,
    double radialEdgeNPerM,
    double axialChipPa,
    double axialEdgeNPerM) {

  /**
   * Refuses coefficients no metal has.
   *
   * @throws OutsideValidity if one is out of range
   */
  public CuttingCoefficients {
    OutsideValidity.within("K_tc", tangentialChipPa, 1e6, 20e9, "Pa");
    OutsideValidity.within("K_te", tangentialEdgeNPerM, 0, 1e6, "N/m");
    OutsideValidity.within("K_rc", radialChipPa, 0, 20e9, "Pa");
    OutsideValidity.within("K_re", radialEdgeNPerM, 0, 1e6, "N/m");
    OutsideValidity.within("K_ac", axialChipPa, 0, 20e9, "Pa");
    OutsideValidity.within("K_ae", axialEdgeNPerM, 0, 1e6, "N/m");
  }

  /** From the units of print: N/mm2 for the chip terms, N/mm for the edge terms. */
  static CuttingCoefficients printed(
      double ktc, double kte, double krc, double kre, double kac, double kae) {
    return new CuttingCoefficients(
        ktc * 1e6, kte * 1e3, krc * 1e6, kre * 1e3, kac * 1e6, kae * 1e3);
  }
}
