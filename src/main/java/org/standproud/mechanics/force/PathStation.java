package org.standproud.mechanics.force;

import java.util.List;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.engagement.PassStretch;

/**
 * The force with the cutter at one place of the pass.
 *
 * @param travelM travel of the cutter axis past the end where the pass starts, in m
 * @param axisXM x of the cutter axis in the vise frame in m
 * @param stretch lead-in, steady or run-out
 * @param arcs what is in cut there, in the feed frame
 * @param forces over a revolution there
 */
public record PathStation(
    double travelM, double axisXM, PassStretch stretch, List<Arc> arcs, RevolutionForces forces) {

  /** Copies the list. */
  public PathStation {
    arcs = List.copyOf(arcs);
  }
}
