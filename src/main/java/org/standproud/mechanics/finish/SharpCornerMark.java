package org.standproud.mechanics.finish;

import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;

/**
 * Feed marks of a corner without a radius: Rt = f / (tan(Cs) + cot(Ce)), Cs the lead angle of the
 * side edge and Ce the trail angle of the end edge; Ra is a quarter of Rt, as of any triangle.
 *
 * <p>Boothroyd and Knight, Fundamentals of Machining and Machine Tools, from memory.
 */
public final class SharpCornerMark {

  private SharpCornerMark() {}

  /**
   * Peak to valley height in m.
   *
   * @param spacingM f, distance between marks in m, 0 to 0.05
   * @param leadAngleRad Cs in rad, 0 to 1.5; a right angle less the entering angle
   * @param trailAngleRad Ce in rad, 0.0001 to 1.5
   * @throws OutsideValidity if an input is out of its range
   */
  public static double rtM(double spacingM, double leadAngleRad, double trailAngleRad) {
    OutsideValidity.within("distance between feed marks", spacingM, 0, 0.05, "m");
    OutsideValidity.within("lead angle", leadAngleRad, 0, 1.5, "rad");
    OutsideValidity.within("trail angle", trailAngleRad, 1e-4, 1.5, "rad");
    return spacingM / (FastMath.tan(leadAngleRad) + 1 / FastMath.tan(trailAngleRad));
  }

  /**
   * Arithmetic mean roughness in m.
   *
   * @param spacingM f, distance between marks in m, 0 to 0.05
   * @param leadAngleRad Cs in rad, 0 to 1.5
   * @param trailAngleRad Ce in rad, 0.0001 to 1.5
   * @throws OutsideValidity if an input is out of its range
   */
  public static double raM(double spacingM, double leadAngleRad, double trailAngleRad) {
    return rtM(spacingM, leadAngleRad, trailAngleRad) / 4;
  }
}
