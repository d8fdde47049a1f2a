package org.standproud.mechanics.drive;

import org.hipparchus.util.FastMath;
import org.standproud.setup.Band;
import org.standproud.setup.FeedDirection;

/**
 * The force of the cut along the way the table goes.
 *
 * <p>Sign: the force on the work reaches the table through the vise. The table goes against the
 * feed of the cutter: a cutter fed toward +X has a table going toward -X. A force on the work
 * toward -X then pulls with the table and unloads the screw; one toward +X is taken by the loaded
 * flank of the screw.
 *
 * @param meanN mean over a turn in N, positive with the table's motion
 * @param greatestWithN greatest force with the table's motion over a turn in N; zero if there is
 *     none
 * @param greatestAgainstN greatest force against it in N; zero if there is none
 */
public record TablePull(Band meanN, Band greatestWithN, Band greatestAgainstN) {

  /**
   * Turns forces in the frame of the vise into forces along the table's motion.
   *
   * @param cutterFeed which way the cutter goes relative to the stock
   * @param leastXN least (most negative) force on the work along X over a turn in N
   * @param meanXN mean force on the work along X in N
   * @param greatestXN greatest force on the work along X over a turn in N
   */
  public static TablePull of(FeedDirection cutterFeed, Band leastXN, Band meanXN, Band greatestXN) {
    return switch (cutterFeed) {
      case PLUS_X ->
          new TablePull(
              meanXN.times(-1), partAboveZero(leastXN.times(-1)), partAboveZero(greatestXN));
      case MINUS_X ->
          new TablePull(meanXN, partAboveZero(greatestXN), partAboveZero(leastXN.times(-1)));
    };
  }

  private static Band partAboveZero(Band forceN) {
    return forceN.map(f -> FastMath.max(0, f));
  }
}
