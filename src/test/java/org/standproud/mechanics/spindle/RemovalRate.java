package org.standproud.mechanics.spindle;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * Stock removed in a second: Q = a_p a_e v_f.
 *
 * <p>Any handbook of machining; Kalpakjian and Schmid, Manufacturing Engineering and Technology,
 * examples 24.1 and 24.2, from memory.
 */
public final class RemovalRate {

  private RemovalRate() {}

  /**
   * Q in m3/s.
   *
   * @param axialDepthM a_p in m, 0 to 1
   * @param radialDepthM a_e in m, 0 to 1
   * @param tableFeedMPerS v_f in m/s, 0 to 10
   * @throws OutsideValidity if an input is out of its range
   */
  public static Band m3PerS(double axialDepthM, double radialDepthM, Band tableFeedMPerS) {
    OutsideValidity.within("axial depth", axialDepthM, 0, 1, "m");
    OutsideValidity.within("radial depth", radialDepthM, 0, 1, "m");
    OutsideValidity.within("table feed", tableFeedMPerS.low(), 0, 10, "m/s");
    OutsideValidity.within("table feed", tableFeedMPerS.high(), 0, 10, "m/s");
    return tableFeedMPerS.times(axialDepthM * radialDepthM);
  }
}
