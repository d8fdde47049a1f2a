package org.standproud.mechanics.force;

import java.util.List;
import java.util.TreeSet;
import org.standproud.mechanics.engagement.Arc;

/**
 * The places of a pass at which the force is worked out, as angles asin(d/R) of the end of the
 * stock at a distance d ahead of the cutter axis.
 *
 * <p>Lead-in and run-out are cut into equal steps of that angle, since the ends of the arc move
 * evenly with it. Between two steps the force changes smoothly except where one more tooth comes to
 * be in cut together with others, and there the peak jumps: where a distance between two ends of
 * the arcs in cut is a whole number of pitches, or that less the wrap of the helix. Those places
 * are added. With n the angle of the end, the arc of the lead-in runs from max(phi_st, n) to
 * min(phi_ex, pi - n); of the run-out from phi_st to n and from pi - n to phi_ex.
 */
final class PassPlaces {

  /** Closer places are one, in rad. */
  private static final double APART_RAD = 1e-5;

  /** How far past a jump the place stands, in rad: the tooth then is in. */
  private static final double PAST_RAD = 1e-6;

  private final Arc arc;
  private final double nearest;
  private final double farthest;
  private final TreeSet<Double> leadIn = new TreeSet<>();
  private final TreeSet<Double> runOut = new TreeSet<>();

  PassPlaces(Arc arc, double pitchRad, double wrapRad, int steps) {
    this.arc = arc;
    this.nearest = Math.asin(arc.greatestSine());
    this.farthest = Math.asin(arc.leastSine());
    for (int k = 0; k <= steps; k++) {
      double angle = nearest - k * (nearest - farthest) / steps;
      leadIn.add(angle);
      runOut.add(angle);
    }
    for (double apart = pitchRad; apart - wrapRad <= arc.spanRad(); apart += pitchRad) {
      jumpsAt(apart);
      if (wrapRad > 0) {
        jumpsAt(apart - wrapRad);
      }
    }
  }

  /** Angles of the near end in the lead-in, rad. */
  Iterable<Double> leadInRad() {
    return leadIn;
  }

  /** Angles of the far end in the run-out, rad. */
  Iterable<Double> runOutRad() {
    return runOut;
  }

  private void jumpsAt(double apartRad) {
    if (apartRad <= 0) {
      return;
    }
    double between = (Math.PI - apartRad) / 2;
    double fromExit = arc.exitRad() - apartRad;
    double fromEntry = Math.PI - arc.entryRad() - apartRad;
    for (double angle : List.of(between, fromExit, fromEntry)) {
      add(leadIn, angle - PAST_RAD);
      add(runOut, angle - PAST_RAD);
    }
    add(runOut, between + PAST_RAD);
    add(runOut, arc.entryRad() + apartRad + PAST_RAD);
    add(runOut, Math.PI - arc.exitRad() + apartRad + PAST_RAD);
  }

  private void add(TreeSet<Double> angles, double angle) {
    if (angle <= farthest || angle >= nearest) {
      return;
    }
    Double below = angles.floor(angle);
    Double above = angles.ceiling(angle);
    boolean crowded =
        below != null && angle - below < APART_RAD || above != null && above - angle < APART_RAD;
    if (!crowded) {
      angles.add(angle);
    }
  }
}
