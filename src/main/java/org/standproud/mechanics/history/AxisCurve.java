package org.standproud.mechanics.history;

import java.util.List;
import java.util.function.Function;
import org.standproud.mechanics.force.AxisForce;
import org.standproud.mechanics.force.PathStation;
import org.standproud.mechanics.force.RevolutionForces;
import org.standproud.setup.Band;

/**
 * One component of the force on the work along the pass, each entry over a revolution at one place,
 * in N with its sign and with its band.
 *
 * @param greatestN the most positive values
 * @param meanN the means over the turn
 * @param leastN the most negative values
 */
public record AxisCurve(List<Band> greatestN, List<Band> meanN, List<Band> leastN) {

  /** Copies the lists. */
  public AxisCurve {
    greatestN = List.copyOf(greatestN);
    meanN = List.copyOf(meanN);
    leastN = List.copyOf(leastN);
  }

  static AxisCurve of(List<PathStation> stations, Function<RevolutionForces, AxisForce> axis) {
    List<AxisForce> forces = stations.stream().map(PathStation::forces).map(axis).toList();
    return new AxisCurve(
        forces.stream().map(AxisForce::greatestN).toList(),
        forces.stream().map(AxisForce::meanN).toList(),
        forces.stream().map(AxisForce::leastN).toList());
  }
}
