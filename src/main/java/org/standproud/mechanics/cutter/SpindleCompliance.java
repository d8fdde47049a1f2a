package org.standproud.mechanics.cutter;

import org.hipparchus.util.FastMath;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.request.MachineFields;

/**
 * How far spindle and holder give at the cutting end for a unit force there.
 *
 * <p>The stiffness k of a machine is stated at the nose. A force at the overhang L also tilts the
 * spindle: if it turns about a point p behind the nose, the give at the tip is (1/k) ((p + L)/p)^2.
 * p is hardly ever known; the band runs from no tilt at all to p = 0.15 m, with p = 0.30 m as the
 * likely value. Own rigid-body model; the band of p is common practice without a source.
 */
public final class SpindleCompliance {

  private static final double SHORT_PIVOT_M = 0.15;
  private static final double LIKELY_PIVOT_M = 0.30;

  /** What is taken for the tilt of the spindle, which no machine record holds. */
  public static final Assumption TILT =
      new Assumption(
          MachineFields.SPINDLE_STIFFNESS,
          "the spindle tilts about a point at least 0.15 m behind its nose, likely 0.30 m",
          "common practice, no source");

  /** One over the distance of the pivot behind the nose in 1/m; nothing is no tilt at all. */
  public static final Band PER_PIVOT_M = new Band(0, 1 / LIKELY_PIVOT_M, 1 / SHORT_PIVOT_M);

  private SpindleCompliance() {}

  /**
   * Give at the cutting end in m/N.
   *
   * @param stiffnessAtNoseNPerM stiffness across the axis at the nose in N/m, 1e5 to 1e10
   * @param overhangM from the nose to the cutting end in m, 0 to 1
   * @throws OutsideValidity if an input is out of its range
   */
  public static Band atTipMPerN(Band stiffnessAtNoseNPerM, double overhangM) {
    OutsideValidity.within("spindle stiffness", stiffnessAtNoseNPerM.low(), 1e5, 1e10, "N/m");
    OutsideValidity.within("spindle stiffness", stiffnessAtNoseNPerM.high(), 1e5, 1e10, "N/m");
    OutsideValidity.within("overhang", overhangM, 0, 1, "m");
    return new Band(
        1 / stiffnessAtNoseNPerM.high(),
        leverSquared(overhangM, LIKELY_PIVOT_M) / stiffnessAtNoseNPerM.likely(),
        leverSquared(overhangM, SHORT_PIVOT_M) / stiffnessAtNoseNPerM.low());
  }

  private static double leverSquared(double overhangM, double pivotM) {
    return FastMath.pow((pivotM + overhangM) / pivotM, 2);
  }
}
