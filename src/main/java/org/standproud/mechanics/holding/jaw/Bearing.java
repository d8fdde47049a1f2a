package org.standproud.mechanics.holding.jaw;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;

/**
 * The depths below the jaw top between which the resultant of one jaw's pressure may lie.
 *
 * @param shallowestM least depth in m
 * @param deepestM greatest depth in m
 */
public record Bearing(double shallowestM, double deepestM) {

  /**
   * Refuses depths above the jaw top or out of order.
   *
   * @throws OutsideValidity if {@code 0 <= shallowest <= deepest <= 1} does not hold
   */
  public Bearing {
    within("deepest bearing", deepestM, 0, 1, "m");
    within("shallowest bearing", shallowestM, 0, deepestM, "m");
  }

  /** A jaw that bears on its whole face of height {@code gripM}: anywhere from lip to bottom. */
  public static Bearing wholeFace(double gripM) {
    return new Bearing(0, gripM);
  }

  /** A jaw that bears on its whole face without a gap at either edge: the middle third. */
  public static Bearing withoutGap(double gripM) {
    return new Bearing(gripM / 3, 2 * gripM / 3);
  }

  /** A wire, a strip or a floating jaw, which bears at one depth only. */
  public static Bearing lineAt(double depthM) {
    return new Bearing(depthM, depthM);
  }
}
