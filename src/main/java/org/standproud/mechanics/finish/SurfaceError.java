package org.standproud.mechanics.finish;

import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * What bending leaves on a finished side: cutter and plate lean apart, and stock stays on, or
 * toward each other, and the cutter digs in, while the tooth makes the surface.
 *
 * <p>Size error runs over both edges of the cut; squareness error is how much it differs between
 * the upper and the lower one. The two bands are taken as independent, which is an upper bound
 * where the edges bend in step. Deflections come from the plate and the cutter; nothing is computed
 * here but their difference. Statics only: vibration leaves more.
 *
 * @param sizeM error of size in m, positive where stock stays on
 * @param squarenessM difference between the upper and the lower edge in m, not negative
 */
public record SurfaceError(Band sizeM, Band squarenessM) {

  /**
   * Sets two edges against each other.
   *
   * @param atUpperEdgeM deflection of cutter and plate away from each other at the top of the cut
   *     in m, within 0.05 either way
   * @param atLowerEdgeM the same at the bottom of the cut in m, within 0.05 either way
   * @throws OutsideValidity if a deflection is out of its range
   */
  public static SurfaceError of(Band atUpperEdgeM, Band atLowerEdgeM) {
    check(atUpperEdgeM);
    check(atLowerEdgeM);
    Band difference = atUpperEdgeM.plus(atLowerEdgeM.times(-1));
    double nearest = FastMath.max(0, FastMath.max(difference.low(), -difference.high()));
    double farthest = FastMath.max(-difference.low(), difference.high());
    boolean upperIsWorse =
        FastMath.abs(atUpperEdgeM.likely()) >= FastMath.abs(atLowerEdgeM.likely());
    return new SurfaceError(
        new Band(
            FastMath.min(atUpperEdgeM.low(), atLowerEdgeM.low()),
            (upperIsWorse ? atUpperEdgeM : atLowerEdgeM).likely(),
            FastMath.max(atUpperEdgeM.high(), atLowerEdgeM.high())),
        new Band(nearest, FastMath.abs(difference.likely()), farthest));
  }

  private static void check(Band deflectionM) {
    OutsideValidity.within("deflection", deflectionM.low(), -0.05, 0.05, "m");
    OutsideValidity.within("deflection", deflectionM.high(), -0.05, 0.05, "m");
  }
}
