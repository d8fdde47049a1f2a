package org.standproud.setup;

import org.jspecify.annotations.Nullable;

/**
 * What a shop measured on the stock as it stands in its vise, before this pass. It holds for that
 * stock in that hold only.
 *
 * @param noteHz lowest note of the stock when tapped at an end of its top edge in Hz; null if not
 *     measured
 * @param dampingRatio damping over critical from the decay of that note; null if not measured
 * @param stiffnessNPerM push across the stock at an end of its top edge over how far it gives there
 *     in N/m; null if not measured
 */
public record HeldMeasurement(
    @Nullable Band noteHz, @Nullable Band dampingRatio, @Nullable Band stiffnessNPerM) {

  /** Nothing measured. */
  public static final HeldMeasurement NONE = new HeldMeasurement(null, null, null);
}
