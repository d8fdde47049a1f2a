package org.standproud.mechanics.tooltip;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * The spindle as its nose shows it in one direction: a rigid spindle that swings about a point
 * behind the nose, and a taper that turns in it.
 *
 * <p>Receptance of the nose, force and moment there: {@code [[p^2, p], [p, 1]]/(k p^2 - J omega^2)}
 * and {@code 1/k_t} more turn per moment, with {@code J = k p^2/(2 pi f)^2}. Own model; statically
 * that of the cutter's deflection elsewhere in this project, give {@code (1/k) ((p + L)/p)^2} at an
 * overhang L. What is hardly ever measured is drawn from the ranges below.
 *
 * @param stiffnessNPerM k, stiffness at the nose, N/m, 1e5 to 1e10
 * @param pivotM p, distance of the point of swing behind the nose, m, 0.02 to 2
 * @param taperNmPerRad k_t, turning stiffness of the taper in the nose, N.m/rad, 1e3 to 1e9
 * @param ownHz f, frequency of the spindle without a tool, Hz, 10 to 1e5
 * @param dampingRatio damping of spindle and taper over critical, 0.001 to 0.3
 */
public record SpindleNose(
    double stiffnessNPerM, double pivotM, double taperNmPerRad, double ownHz, double dampingRatio) {

  /**
   * Turning stiffness of a holder in its taper, N.m/rad: identified interfaces lie about 1e6
   * (Erturk, Ozguven and Budak, IJMTM 46 (2006) 1901, from memory), worn or short ones below.
   */
  public static final Band TAPER_NM_PER_RAD = new Band(3.3e5, 1e6, 3e6);

  /** Frequency of a spindle without a tool, Hz: common practice, no source. */
  public static final Band OWN_HZ = new Band(250, 500, 1000);

  /**
   * Damping at the cutting end: thirteen measured modes lie between 0.017 and 0.131, the middle one
   * near 0.04 (Hajdu and others, IJMTM 149 (2020) 103516; Altintas, Manufacturing Automation, 2012,
   * p. 156; a course file after Schmitz and Smith).
   */
  public static final Band DAMPING = new Band(0.013, 0.04, 0.12);

  /**
   * Refuses what is no spindle.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public SpindleNose {
    within("spindle stiffness", stiffnessNPerM, 1e5, 1e10, "N/m");
    within("pivot of the spindle", pivotM, 0.02, 2, "m");
    within("turning stiffness of the taper", taperNmPerRad, 1e3, 1e9, "N.m/rad");
    within("frequency of the spindle", ownHz, 10, 1e5, "Hz");
    within("damping ratio", dampingRatio, 1e-3, 0.3, "");
  }

  /** Static give at an overhang from the nose, spindle and taper together, m/N. */
  public double giveMPerN(double overhangM) {
    double lever = (pivotM + overhangM) / pivotM;
    return lever * lever / stiffnessNPerM + overhangM * overhangM / taperNmPerRad;
  }
}
