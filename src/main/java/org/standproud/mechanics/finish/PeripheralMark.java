package org.standproud.mechanics.finish;

import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;

/**
 * Scallops that the periphery of a cutter leaves: Rt = f^2 / (4 D), Ra = f^2 / (9 sqrt(3) D).
 *
 * <p>The corner formula with r = D/2: the tooth path is taken as a circle. f is the feed per tooth,
 * or the feed per turn if one tooth stands proud. Martellotti, Trans. ASME 1941, from memory.
 */
public final class PeripheralMark {

  private PeripheralMark() {}

  /**
   * Peak to valley height in m.
   *
   * @param spacingM f, distance between marks in m, 0 to half of the diameter
   * @param diameterM D in m, 0.1 mm to 1 m
   * @throws OutsideValidity if an input is out of its range
   */
  public static double rtM(double spacingM, double diameterM) {
    check(spacingM, diameterM);
    return spacingM * spacingM / (4 * diameterM);
  }

  /**
   * Arithmetic mean roughness in m.
   *
   * @param spacingM f, distance between marks in m, 0 to half of the diameter
   * @param diameterM D in m, 0.1 mm to 1 m
   * @throws OutsideValidity if an input is out of its range
   */
  public static double raM(double spacingM, double diameterM) {
    check(spacingM, diameterM);
    return spacingM * spacingM / (9 * FastMath.sqrt(3) * diameterM);
  }

  private static void check(double spacingM, double diameterM) {
    OutsideValidity.within("cutter diameter", diameterM, 1e-4, 1, "m");
    OutsideValidity.within("distance between feed marks", spacingM, 0, diameterM / 2, "m");
  }
}
