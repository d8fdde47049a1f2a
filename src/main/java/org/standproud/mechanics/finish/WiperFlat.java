package org.standproud.mechanics.finish;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * A flat on the insert that wipes out the feed marks while it is longer than the feed per turn.
 *
 * <p>Then the feed leaves no Rt in theory, and run-out and tilt govern; the design rule is a feed
 * per turn up to 0.8 of the flat, from memory. Grzesik and Wanat 2006 found, in hard turning, that
 * a wiper at 0.2 mm per turn leaves what a plain corner leaves at 0.1.
 */
public final class WiperFlat {

  /** Greatest feed per turn over the length of the flat by the design rule. */
  public static final double DESIGN_RATIO = 0.8;

  private WiperFlat() {}

  /**
   * Feed per turn over the length of the flat; at most {@value #DESIGN_RATIO} by the rule, below 1
   * for any wiping at all.
   *
   * @param feedPerTurnM f in m, 0 to 0.5
   * @param flatM BS in m, 10 um to 0.05 m
   * @throws OutsideValidity if an input is out of its range
   */
  public static Band feedOverFlat(Band feedPerTurnM, double flatM) {
    OutsideValidity.within("feed per turn", feedPerTurnM.low(), 0, 0.5, "m");
    OutsideValidity.within("feed per turn", feedPerTurnM.high(), 0, 0.5, "m");
    OutsideValidity.within("wiper flat", flatM, 1e-5, 0.05, "m");
    return feedPerTurnM.times(1 / flatM);
  }
}
