package org.standproud.mechanics.force;

import org.standproud.mechanics.OutsideValidity;

/**
 * Kienzle's law: F_c = K kc1.1 b h^(1 - mc) with h in units of 1 mm, that is kc = K kc1.1 (h / 1
 * mm)^-mc. kc1.1 and mc by material from VDI 3323 or the German grade tables (Kienzle and Victor;
 * Koenig and Klocke).
 *
 * <p>Valid for chips up to 1 mm (beyond it the tables were not measured); below 0.02 mm see {@link
 * ThinChip}.
 *
 * @param specificForcePa K kc1.1 in Pa, 1 MPa to 20 GPa
 * @param exponent mc, 0 to 0.6
 * @param thinChip reading below the range
 */
public record KienzleLaw(double specificForcePa, double exponent, ThinChip thinChip)
    implements EdgeLaw {

  /** Greatest chip for which the law is used, in m. */
  public static final double GREATEST_CHIP_M = 1e-3;

  /**
   * Refuses constants no tabled material has.
   *
   * @throws OutsideValidity if a constant is out of range
   */
  public KienzleLaw {
    OutsideValidity.within("specific cutting force", specificForcePa, 1e6, 20e9, "Pa");
    OutsideValidity.within("chip exponent", exponent, 0, 0.6, "");
  }

  /**
   * kc at a chip thickness, in Pa, by the law as written.
   *
   * @param chipM h in m, over 0.1 um to 1 mm
   * @throws OutsideValidity if the chip is out of range
   */
  public double specificForcePaAt(double chipM) {
    OutsideValidity.within("chip thickness", chipM, 1e-7, GREATEST_CHIP_M, "m");
    return specificForcePa * Math.pow(chipM * 1000, -exponent);
  }

  @Override
  public int terms() {
    return 1;
  }

  @Override
  public double shape(int term, double chipM) {
    double chip = thinChip == ThinChip.FLOORED ? Math.max(chipM, ThinChip.PLOUGHING_CHIP_M) : chipM;
    if (thinChip == ThinChip.FROZEN && chip < ThinChip.LEAST_SURE_CHIP_M) {
      return chip * specificForcePa * Math.pow(ThinChip.LEAST_SURE_CHIP_M * 1000, -exponent);
    }
    return specificForcePa * 1e-3 * Math.pow(chip * 1000, 1 - exponent);
  }

  @Override
  public double tangential(int term) {
    return 1;
  }

  @Override
  public double normal(int term) {
    return 1;
  }

  @Override
  public double along(int term) {
    return 1;
  }
}
