package org.standproud.mechanics.vibration;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;

/**
 * How a worn or rounded flank that rubs on the waves of the surface damps them.
 *
 * <p>The flank presses into the work with {@code K_sp} per volume of work that it displaces. A land
 * of length l behind an edge that moves at v through a wave displaces {@code b l^2/(2 v)} times the
 * speed of plunging, per width b, and nothing while it rises; over a whole wave that is a damper of
 * {@code c/b = K_sp l^2/(4 v)} (indentation model: Wu, ASME J. Eng. Ind. 111 (1989) 78; equivalent
 * damping: Budak and Tunc, ASME J. Manuf. Sci. Eng. 131 (2009) 051019; Ahmadi and Altintas, IJMTM
 * 87 (2014) 10; all from memory). Holds for motions small beside the wave and for a land short
 * beside it; the land counts with a quarter of a wave {@code v/f} at the most, which is on the safe
 * side.
 *
 * @param indentationPaPerM K_sp, N/m3, 1e12 to 1e16; about 4e13 to 1.5e14 for steels (from memory)
 * @param landM l, worn land or rounding in contact, m, 0 to 1 mm
 * @param speedMPerS v, cutting speed, m/s, 0.001 to 100
 */
public record FlankDamping(double indentationPaPerM, double landM, double speedMPerS) {

  /** K_sp over Young's modulus, 1/m, from the least that is published for steels (from memory). */
  public static final double INDENTATION_PER_MODULUS = 4e13 / 205e9;

  /**
   * Refuses what is no flank.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public FlankDamping {
    within("indentation force per volume", indentationPaPerM, 1e12, 1e16, "N/m3");
    within("worn land", landM, 0, 1e-3, "m");
    within("cutting speed", speedMPerS, 1e-3, 100, "m/s");
  }

  /**
   * Damper of one tooth per width of cut, N.s/m2.
   *
   * @param hz frequency of the waves, Hz
   */
  public double newtonSecondsPerM2(double hz) {
    double land = Math.min(landM, speedMPerS / hz / 4);
    return indentationPaPerM * land * land / (4 * speedMPerS);
  }

  /**
   * What it adds to the damping ratio of a mode, at most up to one half.
   *
   * @param share width of cut of all teeth on the wave, as a mean over the turn, m
   * @param hz natural frequency of the mode, Hz
   * @param stiffnessNPerM its stiffness at the cut, N/m
   */
  public double added(double share, double hz, double stiffnessNPerM) {
    return Math.min(0.4, newtonSecondsPerM2(hz) * share * Math.PI * hz / stiffnessNPerM);
  }
}
