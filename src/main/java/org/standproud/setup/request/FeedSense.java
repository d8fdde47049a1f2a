package org.standproud.setup.request;

import org.standproud.setup.FeedDirection;
import org.standproud.setup.JawSide;
import org.standproud.setup.Mode;
import org.standproud.setup.Spin;

/**
 * Climb or conventional, from where the cutter stands, which way it goes and which way it turns.
 *
 * <pre>
 *   seen from above, X to the right, Y up (toward the fixed jaw)
 *
 *                  ___
 *                /     \     cutter on the fixed jaw side, turning clockwise:
 *               |   +-----&gt;  its lowest teeth, those in the stock, move to the left.
 *                \ &lt;-- /     It feeds toward +X, so the stock moves to the left
 *   ==============================  relative to it: teeth and stock go together: climb.
 *          stock  &lt;--
 * </pre>
 *
 * Each of side, feed and spin, turned over alone, turns the answer over. Down (climb) milling with
 * the teeth leaving the arc at 180 degrees from +Y, as in Altintas, Manufacturing Automation, 2nd
 * ed. 2012, chapter 2 (from memory).
 */
public final class FeedSense {

  private FeedSense() {}

  /**
   * The mode of a cutter whose axis lies beyond one side of the stock.
   *
   * @param side the side of the stock on which the axis lies
   * @param feed which way the cutter moves
   * @param spin which way it turns, seen from above
   */
  public static Mode mode(JawSide side, FeedDirection feed, Spin spin) {
    boolean asDrawn =
        (side == JawSide.FIXED) ^ (feed == FeedDirection.MINUS_X) ^ (spin != Spin.CLOCKWISE);
    return asDrawn ? Mode.CLIMB : Mode.CONVENTIONAL;
  }

  /**
   * The mode of a pass: both if the axis lies over the stock, so that the arc in cut spans both.
   *
   * @param offsetM axis along Y from the middle of the stock in m, positive toward the fixed jaw
   * @param thicknessM thickness of the stock in m
   * @param feed which way the cutter moves
   * @param spin which way it turns, seen from above
   */
  public static Mode mode(double offsetM, double thicknessM, FeedDirection feed, Spin spin) {
    if (Math.abs(offsetM) < thicknessM / 2) {
      return Mode.BOTH;
    }
    return mode(offsetM > 0 ? JawSide.FIXED : JawSide.MOVABLE, feed, spin);
  }
}
