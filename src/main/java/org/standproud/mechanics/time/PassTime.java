package org.standproud.mechanics.time;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * Time in cut and count of passes: t = (lead-in + length + run-out) / v_f, v_f = f_z z n.
 *
 * <p>Time in feed only: no clamping, measuring or return. A missing tooth does not slow the table,
 * so z is the nominal number of teeth. Kalpakjian and Schmid, Manufacturing Engineering and
 * Technology, ch. 24, from memory.
 */
public final class PassTime {

  private PassTime() {}

  /**
   * Table feed v_f in m/s.
   *
   * @param feedPerToothM f_z in m, 0.1 um to 10 mm
   * @param teeth z, 1 to 200
   * @param speedRevPerS n in 1/s, 0.01 to 10 000
   * @throws OutsideValidity if an input is out of its range
   */
  public static Band tableFeedMPerS(Band feedPerToothM, int teeth, double speedRevPerS) {
    OutsideValidity.within("feed per tooth", feedPerToothM.low(), 1e-7, 0.01, "m");
    OutsideValidity.within("feed per tooth", feedPerToothM.high(), 1e-7, 0.01, "m");
    OutsideValidity.within("teeth", teeth, 1, 200, "");
    OutsideValidity.within("spindle speed", speedRevPerS, 0.01, 1e4, "1/s");
    return feedPerToothM.times(teeth * speedRevPerS);
  }

  /**
   * Time of one pass in s.
   *
   * @param path the way of the cutter axis
   * @param tableFeedMPerS v_f in m/s, 0.1 um/s to 100 m/s
   * @throws OutsideValidity if the feed is out of its range
   */
  public static Band onePassS(PassPath path, Band tableFeedMPerS) {
    OutsideValidity.within("table feed", tableFeedMPerS.low(), 1e-7, 100, "m/s");
    OutsideValidity.within("table feed", tableFeedMPerS.high(), 1e-7, 100, "m/s");
    return tableFeedMPerS.map(feed -> path.lengthM() / feed);
  }

  /**
   * Passes of one depth that take off the whole.
   *
   * @param wholeDepthM what has to come off in m, 0 to 1
   * @param depthPerPassM depth of one pass in m, 1 um to 1 m
   * @return none if nothing has to come off
   * @throws OutsideValidity if a depth is out of its range
   */
  public static int passes(double wholeDepthM, double depthPerPassM) {
    OutsideValidity.within("depth to take off", wholeDepthM, 0, 1, "m");
    OutsideValidity.within("depth of a pass", depthPerPassM, 1e-6, 1, "m");
    // a depth that divides evenly must not gain a pass by a rounding in the last digit
    return (int) Math.ceil(wholeDepthM / depthPerPassM - 1e-9);
  }
}
