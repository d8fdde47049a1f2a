package org.standproud.mechanics.finish;

import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * What bending leaves on a finished side: the stock that was not taken because cutter and plate
 * leaned away from each other while the tooth made the surface.
 *
 * <p>Size error is the sum of both deflections; squareness error is how much it differs between the
 * upper and the lower edge of the cut. A sum of the ends of both bands, so an upper bound where one
 * bends in step with the other.
 *
 * @param sizeM stock left on at the worse edge in m
 * @param squarenessM difference between the upper and the lower edge in m, not negative
 */
public record SurfaceError(Band sizeM, Band squarenessM) {

  /**
   * Adds up deflections.
   *
   * @param atUpperEdgeM cutter and plate deflection away from each other at the top of the cut in
   *     m, 0 to 0.05
   * @param atLowerEdgeM the same at the bottom of the cut in m, 0 to 0.05
   * @throws OutsideValidity if a deflection is out of its range
   */
  public static SurfaceError of(Band atUpperEdgeM, Band atLowerEdgeM) {
    check(atUpperEdgeM);
    check(atLowerEdgeM);
    double farApart =
        FastMath.max(
            atUpperEdgeM.high() - atLowerEdgeM.low(), atLowerEdgeM.high() - atUpperEdgeM.low());
    double nearest =
        FastMath.max(
            0,
            FastMath.max(
                atUpperEdgeM.low() - atLowerEdgeM.high(),
                atLowerEdgeM.low() - atUpperEdgeM.high()));
    return new SurfaceError(
        new Band(
            FastMath.max(atUpperEdgeM.low(), atLowerEdgeM.low()),
            FastMath.max(atUpperEdgeM.likely(), atLowerEdgeM.likely()),
            FastMath.max(atUpperEdgeM.high(), atLowerEdgeM.high())),
        new Band(nearest, FastMath.abs(atUpperEdgeM.likely() - atLowerEdgeM.likely()), farApart));
  }

  private static void check(Band deflectionM) {
    OutsideValidity.within("deflection", deflectionM.low(), 0, 0.05, "m");
    OutsideValidity.within("deflection", deflectionM.high(), 0, 0.05, "m");
  }
}
