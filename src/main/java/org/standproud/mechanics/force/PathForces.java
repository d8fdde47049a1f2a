package org.standproud.mechanics.force;

import java.util.List;
import java.util.function.Function;
import org.standproud.setup.Band;

/**
 * The force on the work over the whole pass, lead-in to run-out, in the vise frame.
 *
 * @param stations places along the pass, in order of travel
 * @param x along the jaws
 * @param y across the stock
 * @param z up
 * @param greatestInPlaneN greatest resultant in the plane of the table in N
 */
public record PathForces(
    List<PathStation> stations, AxisForce x, AxisForce y, AxisForce z, Band greatestInPlaneN) {

  /** Copies the list. */
  public PathForces {
    stations = List.copyOf(stations);
  }

  /** Extremes and means (by travel) over stations in order. */
  static PathForces over(List<PathStation> stations) {
    return new PathForces(
        stations,
        axis(stations, RevolutionForces::x),
        axis(stations, RevolutionForces::y),
        axis(stations, RevolutionForces::z),
        greatest(stations, RevolutionForces::greatestInPlaneN));
  }

  private static AxisForce axis(
      List<PathStation> stations, Function<RevolutionForces, AxisForce> axis) {
    return new AxisForce(
        greatest(stations, axis.andThen(AxisForce::greatestN)),
        mean(stations, axis.andThen(AxisForce::meanN)),
        greatest(stations, axis.andThen(a -> a.leastN().times(-1))).times(-1));
  }

  private static Band greatest(
      List<PathStation> stations, Function<RevolutionForces, Band> quantity) {
    Band greatest = quantity.apply(stations.get(0).forces());
    for (PathStation station : stations) {
      Band band = quantity.apply(station.forces());
      greatest =
          new Band(
              Math.max(greatest.low(), band.low()),
              Math.max(greatest.likely(), band.likely()),
              Math.max(greatest.high(), band.high()));
    }
    return greatest;
  }

  private static Band mean(List<PathStation> stations, Function<RevolutionForces, Band> quantity) {
    Band sum = Band.exactly(0);
    double travelled = 0;
    for (int k = 1; k < stations.size(); k++) {
      double travel = stations.get(k).travelM() - stations.get(k - 1).travelM();
      Band before = quantity.apply(stations.get(k - 1).forces());
      Band after = quantity.apply(stations.get(k).forces());
      sum = sum.plus(before.plus(after).times(travel / 2));
      travelled += travel;
    }
    return travelled > 0 ? sum.times(1 / travelled) : quantity.apply(stations.get(0).forces());
  }
}
