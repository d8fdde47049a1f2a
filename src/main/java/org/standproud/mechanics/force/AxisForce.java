package org.standproud.mechanics.force;

import org.standproud.setup.Band;

/**
 * One component of the force on the work over a stretch of time, in N with its sign.
 *
 * @param greatestN the most positive value
 * @param meanN the mean over time
 * @param leastN the most negative value
 */
public record AxisForce(Band greatestN, Band meanN, Band leastN) {

  /** The greatest size either way in N. */
  public Band greatestSizeN() {
    double likely = Math.max(greatestN.likely(), -leastN.likely());
    double high = Math.max(greatestN.high(), -leastN.low());
    double low = Math.max(0, Math.max(greatestN.low(), -leastN.high()));
    return new Band(Math.min(low, likely), likely, Math.max(likely, high));
  }
}
