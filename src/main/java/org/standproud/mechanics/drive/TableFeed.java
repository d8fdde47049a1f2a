package org.standproud.mechanics.drive;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.time.PassTime;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.Machine;

/**
 * The feed of the table and whether the machine can drive it.
 *
 * @param feedMPerS v_f = f_z z n in m/s, the band of a hand counted
 * @param driveFitted whether the machine has the drive that the pass asks for; a hand wheel it
 *     always has
 * @param overGreatest power feed over the greatest the machine has; above 1 it cannot; null by hand
 *     or without power feed
 */
public record TableFeed(Band feedMPerS, boolean driveFitted, @Nullable Band overGreatest) {

  /**
   * The table feed of a pass.
   *
   * @param machine the machine
   * @param cut the pass
   * @param teeth z, nominal teeth, 1 to 200
   * @throws OutsideValidity if feed, teeth or speed is out of its range, or the greatest feed of
   *     the machine is not above zero
   */
  public static TableFeed of(Machine machine, Cut cut, int teeth) {
    Band feed =
        PassTime.tableFeedMPerS(HandFeed.feedPerToothM(cut), teeth, cut.spindleSpeedRevPerS());
    if (cut.feedDrive() == FeedDrive.HAND) {
      return new TableFeed(feed, true, null);
    }
    Double greatest = machine.greatestFeedMPerS();
    if (greatest == null) {
      return new TableFeed(feed, false, null);
    }
    OutsideValidity.within("greatest table feed", greatest, 1e-6, 100, "m/s");
    return new TableFeed(feed, true, feed.times(1 / greatest));
  }
}
