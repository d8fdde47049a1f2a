package org.standproud.web.drawing;

import org.standproud.drawing.Ink;
import org.standproud.drawing.Svg;
import org.standproud.drawing.Svg.Anchor;

/** Draws dimension lines with their heads and numbers. */
final class Dimensions {

  private static final double HEAD = 7;

  /** Shorter dimensions have their heads outside, pointing in. */
  private static final double LEAST_INSIDE = 20;

  private final Svg svg;

  Dimensions(Svg svg) {
    this.svg = svg;
  }

  /**
   * A vertical dimension with its number beside it.
   *
   * @param x where the dimension line stands
   * @param fromX where its extension lines start
   * @param y1 one end
   * @param y2 other end
   * @param words the number
   * @param right whether the words stand to the right
   */
  void vertical(double x, double fromX, double y1, double y2, String words, boolean right) {
    double over = x > fromX ? 4 : -4;
    svg.line(Ink.DIMENSION, fromX, y1, x + over, y1);
    svg.line(Ink.DIMENSION, fromX, y2, x + over, y2);
    double top = Math.min(y1, y2);
    double low = Math.max(y1, y2);
    boolean inside = low - top >= LEAST_INSIDE;
    double out = inside ? 0 : 2 * HEAD;
    svg.line(Ink.DIMENSION, x, top - out, x, low + out);
    svg.head(Ink.DIMENSION_HEAD, x, top, 0, inside ? -1 : 1, HEAD);
    svg.head(Ink.DIMENSION_HEAD, x, low, 0, inside ? 1 : -1, HEAD);
    double middle = (top + low) / 2 + Svg.LETTER * 0.35;
    svg.patchedText(right ? x + 7 : x - 7, middle, right ? Anchor.START : Anchor.END, words);
  }

  /** A horizontal dimension with its number on it. */
  void horizontal(double y, double fromY, double x1, double x2, String words) {
    double over = y > fromY ? 4 : -4;
    svg.line(Ink.DIMENSION, x1, fromY, x1, y + over);
    svg.line(Ink.DIMENSION, x2, fromY, x2, y + over);
    double left = Math.min(x1, x2);
    double right = Math.max(x1, x2);
    svg.line(Ink.DIMENSION, left, y, right, y);
    svg.head(Ink.DIMENSION_HEAD, left, y, -1, 0, HEAD);
    svg.head(Ink.DIMENSION_HEAD, right, y, 1, 0, HEAD);
    svg.patchedText((left + right) / 2, y + Svg.LETTER * 0.35, Anchor.MIDDLE, words);
  }
}
