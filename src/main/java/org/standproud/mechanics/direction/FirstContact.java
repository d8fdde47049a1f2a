package org.standproud.mechanics.direction;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.force.PathForces;
import org.standproud.mechanics.force.RevolutionForces;
import org.standproud.mechanics.force.VectorBand;
import org.standproud.setup.Band;

/**
 * The first touch, when the cutter comes in over the end of the stock. The circle of the cutter
 * reaches the end first where it stands farthest ahead on the arc: straight ahead (phi = 90
 * degrees) if the stock lies there, else at the corner nearer to that. The force is that of one
 * tooth with its whole bite and its whole edge: the first blow is anything up to it, and points the
 * same way.
 *
 * @param angleRad phi of the tooth in the feed frame
 * @param place which part of the end
 * @param xM x of the touch in the vise frame in m
 * @param yM y of the touch in the vise frame in m
 * @param chipM chip of a full bite there, without run-out, in m
 * @param force on the work
 * @param pullTowardCutterN part of the force across the stock that points toward the side where the
 *     cutter axis stands, negative if it points into the stock, in N; null if the axis stands over
 *     the stock
 * @param greatestWhileFillingN greatest in-plane force until the whole arc is in the stock, in N
 * @param startsInStock whether the feed starts with the cutter already in the stock
 */
public record FirstContact(
    double angleRad,
    ContactPlace place,
    double xM,
    double yM,
    Band chipM,
    VectorBand force,
    @Nullable Band pullTowardCutterN,
    Band greatestWhileFillingN,
    boolean startsInStock) {

  static FirstContact of(ForceInput input, PassForces forces) {
    Arc arc = forces.steadyArc();
    double angle = arc.thickestRad();
    double radiusM = forces.geometry().radiusM();
    double offsetM = input.cut().offsetM();
    double yM = offsetM + forces.geometry().frame().viseY(radiusM * Math.cos(angle));
    VectorBand force = forces.oneToothAt(angle);
    boolean beyond = Math.abs(offsetM) > input.stock().thicknessM() / 2;
    double sine = arc.greatestSine() * forces.edge().sine();
    return new FirstContact(
        angle,
        place(arc, yM),
        forces.geometry().viseX(0),
        yM,
        input.cut().feedPerToothM().times(sine),
        force,
        beyond ? force.yN().times(Math.signum(offsetM)) : null,
        PathForces.greatest(forces.path().filling(), RevolutionForces::greatestInPlaneN),
        input.cut().leadInM() < radiusM * arc.greatestSine());
  }

  private static ContactPlace place(Arc arc, double yM) {
    boolean straightAhead = arc.entryRad() < Math.PI / 2 && arc.exitRad() > Math.PI / 2;
    if (straightAhead) {
      return ContactPlace.END_FACE;
    }
    return yM > 0 ? ContactPlace.CORNER_AT_FIXED_JAW_SIDE : ContactPlace.CORNER_AT_MOVABLE_JAW_SIDE;
  }

  /**
   * The jump in force as the cut fills, in N: from the first blow to the greatest in-plane force
   * until the whole arc is in the stock, F_fill - F_first, never below zero. The first blow may be
   * anything up to that of a whole bite, so at most the jump is all of F_fill.
   */
  public Band jumpWhileFillingN() {
    double likely =
        greatestWhileFillingN.likely() - Math.hypot(force.xN().likely(), force.yN().likely());
    double least =
        greatestWhileFillingN.low()
            - Math.hypot(greatestSize(force.xN()), greatestSize(force.yN()));
    double jump = Math.max(0, likely);
    return new Band(
        Math.min(jump, Math.max(0, least)), jump, Math.max(jump, greatestWhileFillingN.high()));
  }

  private static double greatestSize(Band band) {
    return Math.max(Math.abs(band.low()), Math.abs(band.high()));
  }
}
