package org.standproud.mechanics.holding.other;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.contact.JointStiffness;
import org.standproud.mechanics.plate.GrippedFoot;

/**
 * How stock that straps press flat on packing gives and swings across the table.
 *
 * <p>Formula: each strap presses its foot of area A with F, through two pressed joints one above
 * the other, packing on table and stock on packing. A joint gives along its faces with {@code k_t =
 * r k_n A}, {@code k_n} the slope of {@link JointStiffness} at the pressure F/A and r as in {@link
 * GrippedFoot#TANGENTIAL_RATIO}; z straps give {@code k = z k_t/2}. The stock is rigid and rides on
 * them: {@code f = sqrt(k/m)/(2 pi)}. k in N/m, m in kg, f in Hz. Friction under the noses of the
 * straps and the bending of the overhang are left out: a short overhang rings far above the blows
 * of the teeth (a square one of 20 mm in steel near 44 kHz, from {@code 0.56 sqrt(D/(rho h))/c^2},
 * Blevins, Formulas for Natural Frequency and Mode Shape, 1979, from memory). Own model.
 *
 * @param straps z, 1 to 20
 * @param footM2 A, pressed area under each strap, m2
 * @param massKg m, kg
 */
public record LyingStock(int straps, double footM2, double massKg) {

  /** Nose of a strap with its packing below it, 30 mm square; common practice, no source. */
  public static final double FOOT_M2 = 9e-4;

  /**
   * Refuses what is out of range.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public LyingStock {
    within("number of straps", straps, 1, 20, "");
    within("area under a strap", footM2, 1e-6, 1, "m2");
    within("mass of the stock", massKg, 1e-4, 1e4, "kg");
  }

  /**
   * Stiffness across the table, N/m.
   *
   * @param forceN force of all straps together, N
   * @param jointCoefficient coefficient of the law of pressed faces
   * @param ratio r, stiffness along a joint over that across it, 0 to 1
   */
  public double stiffnessNPerM(double forceN, double jointCoefficient, double ratio) {
    double pressurePa = forceN / (straps * footM2);
    double acrossPaPerM = JointStiffness.stiffnessPaPerM(jointCoefficient, pressurePa);
    return within("ratio of tangential to normal stiffness", ratio, 0, 1, "")
        * acrossPaPerM
        * straps
        * footM2
        / 2;
  }

  /**
   * Frequency at which it swings, Hz.
   *
   * @param stiffnessNPerM stiffness across the table, N/m
   */
  public double naturalHz(double stiffnessNPerM) {
    return Math.sqrt(stiffnessNPerM / massKg) / (2 * Math.PI);
  }
}
