package org.standproud.mechanics.history;

import java.util.List;
import org.standproud.mechanics.engagement.PassStretch;
import org.standproud.mechanics.force.PathStation;

/**
 * The force on the work along the pass: the peak, mean and least of a revolution at each place. All
 * lists have one entry for each place, in order of travel; between two places the curve is a
 * straight line. In the steady stretch it is level, so that its two ends are enough.
 *
 * @param travelM travel of the cutter axis past the end where the pass starts, in m, negative
 *     before it
 * @param axisXM x of the cutter axis in the vise frame in m
 * @param stretches the stretch each place belongs to
 * @param x along the jaws
 * @param y across the stock, positive toward the fixed jaw
 * @param z up
 */
public record PathCurve(
    List<Double> travelM,
    List<Double> axisXM,
    List<PassStretch> stretches,
    AxisCurve x,
    AxisCurve y,
    AxisCurve z) {

  /** Copies the lists. */
  public PathCurve {
    travelM = List.copyOf(travelM);
    axisXM = List.copyOf(axisXM);
    stretches = List.copyOf(stretches);
  }

  static PathCurve of(List<PathStation> stations) {
    return new PathCurve(
        stations.stream().map(PathStation::travelM).toList(),
        stations.stream().map(PathStation::axisXM).toList(),
        stations.stream().map(PathStation::stretch).toList(),
        AxisCurve.of(stations, forces -> forces.x()),
        AxisCurve.of(stations, forces -> forces.y()),
        AxisCurve.of(stations, forces -> forces.z()));
  }
}
