package org.standproud.mechanics.engagement;

import org.standproud.setup.FeedDirection;
import org.standproud.setup.Spin;

/**
 * Converts between the feed frame, in which every milling formula of this project is written, and
 * the frame of the vise. It is the only place where spin and feed direction are turned into signs.
 *
 * <p>Feed frame: origin on the cutter axis, x' along the feed of the cutter relative to the work,
 * z' up, cutter turning clockwise seen from above. A tooth at angle phi, measured clockwise from
 * +y', stands at R (sin phi, cos phi); it cuts between 0 and pi. (Convention of Altintas,
 * Manufacturing Automation, 2nd ed. 2012, ch. 2; from memory.)
 *
 * <p>Vise frame: x along the jaws, y toward the fixed jaw, z up. Clockwise fed toward +x is the
 * feed frame itself. Reversing the feed turns the frame half round (x and y change sign; the spin
 * does not). Reversing the spin mirrors the frame in the plane of the feed (y changes sign). Hence
 * the sign of x is the sign of the feed and the sign of y is that of feed times spin.
 *
 * @param xSign +1 if x' runs with x, else -1
 * @param ySign +1 if y' runs with y, else -1
 */
public record FeedFrame(int xSign, int ySign) {

  /**
   * The frame of a pass.
   *
   * @param spin sense of rotation seen from above
   * @param feed which way the cutter moves relative to the stock
   */
  public static FeedFrame of(Spin spin, FeedDirection feed) {
    int feedSign = feed == FeedDirection.PLUS_X ? 1 : -1;
    int spinSign = spin == Spin.CLOCKWISE ? 1 : -1;
    return new FeedFrame(feedSign, feedSign * spinSign);
  }

  /** The x component in the vise frame of a vector, given its x' component; either unit. */
  public double viseX(double feedX) {
    return xSign * feedX;
  }

  /** The y component in the vise frame of a vector, given its y' component; either unit. */
  public double viseY(double feedY) {
    return ySign * feedY;
  }

  /** The y' component in the feed frame of a vector, given its y component; either unit. */
  public double feedY(double viseY) {
    return ySign * viseY;
  }
}
