package org.standproud.mechanics.finish;

import org.hipparchus.util.FastMath;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.request.RequestFields;

/**
 * Hollow that an end-cutting mill leaves when its spindle leans in the feed direction: c = R (1 -
 * sqrt(1 - (w/D)^2)) tan(theta), R = D/2, w the width cut under the middle of the cutter.
 *
 * <p>The leaning circle of the edges, seen along the feed, is an ellipse. Own derivation. It does
 * not hold for a cutter narrower than the cut, nor for an axis off the middle.
 */
public final class TramError {

  /**
   * Lean of a spindle that was not indicated, in rad: up to 0.05 mm over 200 mm, likely 0.02 over
   * 300.
   */
  public static final Band NOT_INDICATED_RAD = new Band(0, 0.02 / 300, 0.05 / 200);

  /** What is taken for the tram, which no set-up states. */
  public static final Assumption ASSUMPTION =
      new Assumption(
          RequestFields.MACHINE,
          "the spindle leans by 0 to 0.05 mm over 200 mm, likely 0.02 mm over 300 mm",
          "common practice, no source; 0.02 to 0.03 over 300 is what ISO 1701 permits, from memory");

  private TramError() {}

  /**
   * Depth of the hollow in m.
   *
   * @param diameterM D in m, 0.1 mm to 1 m
   * @param widthM w in m, 0 to D
   * @param leanRad theta in rad, 0 to 0.1
   * @throws OutsideValidity if an input is out of its range
   */
  public static double hollowM(double diameterM, double widthM, double leanRad) {
    OutsideValidity.within("cutter diameter", diameterM, 1e-4, 1, "m");
    OutsideValidity.within("width of cut", widthM, 0, diameterM, "m");
    OutsideValidity.within("lean of the spindle", leanRad, 0, 0.1, "rad");
    double ratio = widthM / diameterM;
    return diameterM / 2 * (1 - FastMath.sqrt(1 - ratio * ratio)) * FastMath.tan(leanRad);
  }
}
