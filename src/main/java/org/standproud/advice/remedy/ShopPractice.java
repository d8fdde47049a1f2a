package org.standproud.advice.remedy;

import org.standproud.setup.Cut;
import org.standproud.setup.Setup;
import org.standproud.setup.Stage;

/**
 * What a toolmaker would not do to save a set-up, even if the numbers allow it: common practice, no
 * source for the limits.
 */
final class ShopPractice {

  /** More passes than this take longer than another hold. */
  static final int MOST_PASSES = 6;

  /** A thinner roughing pass is not worth its time. */
  static final double LEAST_ROUGHING_DEPTH_M = 0.2e-3;

  private static final double LEAST_FINISHING_DEPTH_M = 0.05e-3;

  /** Height above the jaws over grip depth: twice what counts as tall. */
  static final double MOST_STANDING = 5;

  private static final double SLACK = 1 + 1e-9;

  private ShopPractice() {}

  /** The thinnest pass of a stage. */
  static double leastDepthM(Stage stage) {
    return stage == Stage.FINISH ? LEAST_FINISHING_DEPTH_M : LEAST_ROUGHING_DEPTH_M;
  }

  /**
   * Whether the plate is no higher above the jaws than is usual, or the jaws grip no deeper.
   *
   * @param setup the set-up after the changes
   */
  static boolean standsLow(Setup setup) {
    double grip = setup.hold().gripDepthM() * SLACK;
    return setup.stickOutM() <= MOST_STANDING * grip || grip >= setup.hold().vise().jawHeightM();
  }

  /**
   * Whether the cutter stays at or above its least published speed. One that already runs slower
   * may stay as it is.
   *
   * @param before the set-up before the changes
   * @param after the set-up after them
   */
  static boolean runsUpToSpeed(Setup before, Setup after) {
    double speed = speedMPerS(after) * SLACK;
    boolean sameTool = before.cutter().toolMaterial() == after.cutter().toolMaterial();
    return speed >= leastSpeedMPerS(after) || sameTool && speed >= speedMPerS(before);
  }

  private static double leastSpeedMPerS(Setup setup) {
    return setup.stock().material().rangeFor(setup.cutter().toolMaterial()).leastSpeedMPerS();
  }

  private static double speedMPerS(Setup setup) {
    Cut cut = setup.cut();
    return Math.PI * setup.cutter().diameterM() * cut.spindleSpeedRevPerS();
  }
}
