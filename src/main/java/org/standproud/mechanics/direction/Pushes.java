package org.standproud.mechanics.direction;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.standproud.mechanics.force.AxisForce;
import org.standproud.setup.Band;

/**
 * The greatest push each way over some stretch of a pass.
 *
 * @param peakN greatest push by way, in N, zero where there is none
 * @param negligibleN a push up to this size does not count as one: 2 % of the greatest in-plane
 *     force, the accuracy of the bands
 */
public record Pushes(Map<Way, Band> peakN, double negligibleN) {

  private static final double NEGLIGIBLE_SHARE = 0.02;

  /** Copies the map. */
  public Pushes {
    peakN = Collections.unmodifiableMap(new EnumMap<>(peakN));
  }

  static Pushes of(AxisForce x, AxisForce y, AxisForce z, Band greatestInPlaneN) {
    Map<Way, Band> peaks = new EnumMap<>(Way.class);
    for (Way way : Way.values()) {
      peaks.put(way, way.peakN(x, y, z));
    }
    return new Pushes(peaks, NEGLIGIBLE_SHARE * greatestInPlaneN.likely());
  }

  /** The greatest push one way in N. */
  public Band peakN(Way way) {
    Band peak = peakN.get(way);
    if (peak == null) {
      throw new IllegalStateException("no peak for " + way);
    }
    return peak;
  }

  /** Whether the stock is pushed one way at any moment. */
  public Occurrence occurs(Way way) {
    return Occurrence.of(peakN(way), negligibleN);
  }
}
