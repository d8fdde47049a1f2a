package org.standproud.web.drawing;

import org.standproud.drawing.Ink;
import org.standproud.drawing.Svg;

/** Draws a force as an arrow whose length is proportional to it. */
final class Arrow {

  private static final double SHAFT = 6;

  private Arrow() {}

  /**
   * Draws a closed outline of seven points; the fourth is the tip.
   *
   * @param svg the drawing
   * @param ink solid for likely forces, open for the worst
   * @param part its class in the drawing
   * @param x where it begins
   * @param y where it begins
   * @param ux its direction along x, -1 to 1
   * @param uy its direction down y, -1 to 1
   * @param length from there to its tip
   */
  static void draw(
      Svg svg, Ink ink, String part, double x, double y, double ux, double uy, double length) {
    double head = Math.min(14, length * 0.6);
    double neck = length - head;
    double half = (ink == Ink.FORCE ? SHAFT + 2 : SHAFT) / 2;
    double wide = Math.min(8, half + length * 0.2);
    double[] along = {0, neck, neck, length, neck, neck, 0};
    double[] aside = {half, half, wide, 0, -wide, -half, -half};
    double[] points = new double[14];
    for (int i = 0; i < 7; i++) {
      points[2 * i] = x + ux * along[i] - uy * aside[i];
      points[2 * i + 1] = y + uy * along[i] + ux * aside[i];
    }
    svg.polygon(ink, part, points);
  }
}
