package org.standproud.mechanics.finish;

import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;

/**
 * How the feed marks of an end-cutting mill lie at one place across the stock.
 *
 * <p>A mark is an arc of the cutter circle, moved on along the feed by f each time. At y from the
 * axis it leans by asin(y/R) from square to the feed, and the distance between marks, square to
 * them, is f sqrt(1 - (y/R)^2). A cutter whose axis stands over the middle leaves marks square to
 * the stock there and alike on both sides. One set so that its edge just meets the side of the
 * stock (tangent) leaves marks that run out along that side and crowd together. The height of the
 * marks along the feed does not change; only their lay does. Own geometry of circles, trochoid left
 * out.
 *
 * @param leanRad angle of the mark from square to the feed in rad, signed as y
 * @param spacingM distance between marks square to them in m
 */
public record MarkLay(double leanRad, double spacingM) {

  /**
   * The lay at one place.
   *
   * @param fromAxisM y, distance of the place from the cutter axis across the feed in m, signed,
   *     not beyond the radius
   * @param diameterM D in m, 0.1 mm to 1 m
   * @param feedM f, distance between marks along the feed in m, 0 to 0.5
   * @throws OutsideValidity if an input is out of its range
   */
  public static MarkLay at(double fromAxisM, double diameterM, double feedM) {
    OutsideValidity.within("cutter diameter", diameterM, 1e-4, 1, "m");
    double radius = diameterM / 2;
    OutsideValidity.within("distance from the axis", fromAxisM, -radius, radius, "m");
    OutsideValidity.within("distance between feed marks", feedM, 0, 0.5, "m");
    double sine = fromAxisM / radius;
    return new MarkLay(FastMath.asin(sine), feedM * FastMath.sqrt(1 - sine * sine));
  }
}
