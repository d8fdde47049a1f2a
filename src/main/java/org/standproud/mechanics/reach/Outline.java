package org.standproud.mechanics.reach;

import org.hipparchus.util.FastMath;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;

/**
 * Outlines of bodies in one view and the room between them. Coordinates are rounded to a nanometre
 * so that faces that touch do not count as overlapping.
 */
final class Outline {

  private static final GeometryFactory NANOMETRES = new GeometryFactory(new PrecisionModel(1e9));

  private Outline() {}

  /**
   * A box, in m.
   *
   * @param from least place along the horizontal axis of the view
   * @param to greatest place along it
   * @param fromZ lower end
   * @param toZ upper end
   */
  static Geometry box(double from, double to, double fromZ, double toZ) {
    PrecisionModel rounding = NANOMETRES.getPrecisionModel();
    return NANOMETRES.toGeometry(
        new Envelope(
            rounding.makePrecise(from),
            rounding.makePrecise(to),
            rounding.makePrecise(fromZ),
            rounding.makePrecise(toZ)));
  }

  /** Distance in m; negative: how far one goes into the other along an axis, whichever is less. */
  static double marginM(Geometry outline, Geometry block) {
    if (outline.isRectangle() && block.isRectangle()) {
      return betweenBoxesM(outline.getEnvelopeInternal(), block.getEnvelopeInternal());
    }
    if (!outline.getEnvelopeInternal().intersects(block.getEnvelopeInternal())) {
      return outline.distance(block);
    }
    Geometry overlap = outline.intersection(block);
    if (overlap.getArea() <= 0) {
      return outline.distance(block);
    }
    return -lesserSideM(overlap.getEnvelopeInternal());
  }

  /** A box is its own envelope: no overlay is needed. */
  private static double betweenBoxesM(Envelope one, Envelope other) {
    Envelope common = one.intersection(other);
    return common.getArea() > 0 ? -lesserSideM(common) : one.distance(other);
  }

  private static double lesserSideM(Envelope box) {
    return FastMath.min(box.getWidth(), box.getHeight());
  }
}
