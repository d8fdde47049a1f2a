package org.standproud.mechanics.reach;

import org.hipparchus.util.FastMath;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.PrecisionModel;

/**
 * Outlines of bodies in one view and the room between them. Coordinates are rounded to a nanometre
 * so that faces that touch do not count as overlapping.
 */
final class Outline {

  private static final PrecisionModel NANOMETRES = new PrecisionModel(1e9);

  private Outline() {}

  /**
   * A box, in m.
   *
   * @param from least place along the horizontal axis of the view
   * @param to greatest place along it
   * @param fromZ lower end
   * @param toZ upper end
   */
  static Envelope box(double from, double to, double fromZ, double toZ) {
    return new Envelope(
        NANOMETRES.makePrecise(from),
        NANOMETRES.makePrecise(to),
        NANOMETRES.makePrecise(fromZ),
        NANOMETRES.makePrecise(toZ));
  }

  /** Distance in m; negative: how far one goes into the other along an axis, whichever is less. */
  static double marginM(Envelope outline, Envelope block) {
    Envelope common = outline.intersection(block);
    return common.getArea() > 0
        ? -FastMath.min(common.getWidth(), common.getHeight())
        : outline.distance(block);
  }
}
