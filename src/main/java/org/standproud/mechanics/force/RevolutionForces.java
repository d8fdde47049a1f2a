package org.standproud.mechanics.force;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.standproud.setup.Band;

/**
 * The force on the work over one revolution, in the vise frame.
 *
 * @param x along the jaws
 * @param y across the stock, positive toward the fixed jaw
 * @param z up
 * @param greatestInPlaneN greatest resultant in the plane of the table in N
 * @param meanTangentialN mean sum of the tangential forces in N; times v_c it is the power
 * @param greatestTangentialN greatest sum of the tangential forces in N; times D/2 the torque
 */
public record RevolutionForces(
    AxisForce x,
    AxisForce y,
    AxisForce z,
    Band greatestInPlaneN,
    Band meanTangentialN,
    Band greatestTangentialN) {

  /**
   * Share of a band's reach by which it is widened, since between the corners that were computed a
   * sum of teeth that push against each other may run slightly past both.
   */
  private static final double BETWEEN_CORNERS = 0.02;

  /** The bands spanned by the likely case and all others. */
  static RevolutionForces spanning(ForceExtremes likely, List<ForceExtremes> others) {
    return new RevolutionForces(
        axis(ForceExtremes.X, likely, others),
        axis(ForceExtremes.Y, likely, others),
        axis(ForceExtremes.Z, likely, others),
        notNegative(span(ForceExtremes::greatestInPlaneN, likely, others)),
        notNegative(span(e -> e.meanN(ForceExtremes.TANGENTIAL), likely, others)),
        notNegative(span(e -> e.greatestN(ForceExtremes.TANGENTIAL), likely, others)));
  }

  private static AxisForce axis(int axis, ForceExtremes likely, List<ForceExtremes> others) {
    return new AxisForce(
        span(e -> e.greatestN(axis), likely, others),
        span(e -> e.meanN(axis), likely, others),
        span(e -> e.leastN(axis), likely, others));
  }

  private static Band span(
      ToDoubleFunction<ForceExtremes> value, ForceExtremes likely, List<ForceExtremes> others) {
    double middle = value.applyAsDouble(likely);
    double low = middle;
    double high = middle;
    for (ForceExtremes other : others) {
      double at = value.applyAsDouble(other);
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    double margin = BETWEEN_CORNERS * Math.max(Math.abs(low), Math.abs(high));
    return new Band(low - margin, middle + 0.0, high + margin);
  }

  private static Band notNegative(Band band) {
    return band.map(value -> Math.max(0, value));
  }
}
