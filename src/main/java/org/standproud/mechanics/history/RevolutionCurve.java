package org.standproud.mechanics.history;

import java.util.List;
import org.standproud.mechanics.engagement.PassStretch;
import org.standproud.mechanics.force.ForceSample;
import org.standproud.mechanics.force.PathStation;

/**
 * The force on the work over one revolution with the cutter at one place. All lists have one entry
 * for each step of the turn.
 *
 * @param axisXM x of the cutter axis in the vise frame in m
 * @param stretch the stretch of the pass the place belongs to
 * @param turnRad turn of the cutter in rad, from 0 to just under a full turn
 * @param xN along the jaws in N
 * @param yN across the stock in N, positive toward the fixed jaw
 * @param zN up in N
 */
public record RevolutionCurve(
    double axisXM,
    PassStretch stretch,
    List<Double> turnRad,
    List<Double> xN,
    List<Double> yN,
    List<Double> zN) {

  /** Copies the lists. */
  public RevolutionCurve {
    turnRad = List.copyOf(turnRad);
    xN = List.copyOf(xN);
    yN = List.copyOf(yN);
    zN = List.copyOf(zN);
  }

  static RevolutionCurve of(PathStation place, List<ForceSample> samples) {
    return new RevolutionCurve(
        place.axisXM(),
        place.stretch(),
        samples.stream().map(ForceSample::turnRad).toList(),
        samples.stream().map(s -> s.force().xN()).toList(),
        samples.stream().map(s -> s.force().yN()).toList(),
        samples.stream().map(s -> s.force().zN()).toList());
  }
}
