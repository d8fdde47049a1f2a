package org.standproud.mechanics.finish;

import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;

/**
 * Feed marks of a rounded corner: Rt = r - sqrt(r^2 - f^2/4), Ra = f^2 / (18 sqrt(3) r).
 *
 * <p>f is the distance between marks: feed per tooth if all teeth stand level, feed per turn if one
 * stands proud of the rest. Geometry only; the surface is never better. Valid while the marks are
 * of the round corner alone, held here to f up to r. Boothroyd and Knight, Fundamentals of
 * Machining and Machine Tools, from memory; Qu and Shih 2003 (abstract) find the parabola within
 * 1.6 % for f/r below 0.5.
 */
public final class CornerMark {

  private CornerMark() {}

  /**
   * Peak to valley height in m.
   *
   * @param spacingM f, distance between marks in m, 0 to the corner radius
   * @param cornerRadiusM r in m, 1 um to 0.1 m
   * @throws OutsideValidity if an input is out of its range
   */
  public static double rtM(double spacingM, double cornerRadiusM) {
    check(spacingM, cornerRadiusM);
    double half = spacingM / 2;
    // equal to r - sqrt(r^2 - f^2/4) without the difference of two near numbers
    return half
        * half
        / (cornerRadiusM + FastMath.sqrt(cornerRadiusM * cornerRadiusM - half * half));
  }

  /**
   * Arithmetic mean roughness in m.
   *
   * @param spacingM f, distance between marks in m, 0 to the corner radius
   * @param cornerRadiusM r in m, 1 um to 0.1 m
   * @throws OutsideValidity if an input is out of its range
   */
  public static double raM(double spacingM, double cornerRadiusM) {
    check(spacingM, cornerRadiusM);
    return spacingM * spacingM / (18 * FastMath.sqrt(3) * cornerRadiusM);
  }

  private static void check(double spacingM, double cornerRadiusM) {
    OutsideValidity.within("corner radius", cornerRadiusM, 1e-6, 0.1, "m");
    OutsideValidity.within("distance between feed marks", spacingM, 0, cornerRadiusM, "m");
  }
}
