package org.standproud.mechanics.force;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.standproud.mechanics.engagement.PassStretch;
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

  /**
   * The places from the first touch to the first with the whole arc in the stock, that included.
   */
  public List<PathStation> filling() {
    List<PathStation> filling = new ArrayList<>();
    for (PathStation station : stations) {
      if (station.stretch() == PassStretch.RUN_OUT) {
        break;
      }
      filling.add(station);
      if (station.stretch() == PassStretch.STEADY) {
        break;
      }
    }
    return filling;
  }

  /**
   * The greatest of a quantity over places, each end of its band for itself.
   *
   * @param stations at least one place
   * @param quantity what to take of a revolution there
   */
  public static Band greatest(
      List<PathStation> stations, Function<RevolutionForces, Band> quantity) {
    return stations.stream()
        .map(station -> quantity.apply(station.forces()))
        .reduce(PathForces::greater)
        .orElseThrow();
  }

  private static Band greater(Band a, Band b) {
    return new Band(
        Math.max(a.low(), b.low()), Math.max(a.likely(), b.likely()), Math.max(a.high(), b.high()));
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
