package org.standproud.mechanics.published;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/**
 * A line chart as SVG: axes through the least values, one polyline a curve, its name at its end.
 */
final class Chart {

  private static final int WIDTH = 640;
  private static final int HEIGHT = 360;
  private static final int LEFT = 70;
  private static final int RIGHT = 150;
  private static final int TOP = 20;
  private static final int BOTTOM = 50;
  private static final String[] COLOURS = {"#1b5e9b", "#b3261e", "#2e7d32", "#6a3d9a", "#8a5a00"};

  private final String across;
  private final String up;
  private final List<Curve> curves = new ArrayList<>();

  private record Curve(String name, double[] x, double[] y) {}

  /**
   * An empty chart.
   *
   * @param across what goes to the right, with its unit
   * @param up what goes up, with its unit
   */
  Chart(String across, String up) {
    this.across = across;
    this.up = up;
  }

  Chart curve(String name, double[] x, double[] y) {
    curves.add(new Curve(name, x, y));
    return this;
  }

  Chart curve(String name, double from, double to, int steps, DoubleUnaryOperator value) {
    double[] x = new double[steps + 1];
    double[] y = new double[steps + 1];
    for (int k = 0; k <= steps; k++) {
      x[k] = from + k * (to - from) / steps;
      y[k] = value.applyAsDouble(x[k]);
    }
    return curve(name, x, y);
  }

  String svg() {
    double[] x = range(curves.stream().map(Curve::x).toList());
    double[] y = range(curves.stream().map(Curve::y).toList());
    StringBuilder svg = new StringBuilder(header(WIDTH, HEIGHT));
    for (int k = 0; k <= 4; k++) {
      double atX = x[0] + k * (x[1] - x[0]) / 4;
      double atY = y[0] + k * (y[1] - y[0]) / 4;
      svg.append(line(placeX(atX, x), TOP, placeX(atX, x), HEIGHT - BOTTOM, "#ddd", 1));
      svg.append(line(LEFT, placeY(atY, y), WIDTH - RIGHT, placeY(atY, y), "#ddd", 1));
      svg.append(text(placeX(atX, x), HEIGHT - BOTTOM + 18, "middle", "#333", number(atX)));
      svg.append(text(LEFT - 8, placeY(atY, y) + 4, "end", "#333", number(atY)));
    }
    svg.append(text((LEFT + WIDTH - RIGHT) / 2.0, HEIGHT - 10, "middle", "#000", across));
    svg.append(text(LEFT, TOP - 6, "start", "#000", up));
    for (int c = 0; c < curves.size(); c++) {
      draw(curves.get(c), COLOURS[c % COLOURS.length], x, y, svg);
    }
    return svg.append("</svg>\n").toString();
  }

  private void draw(Curve curve, String colour, double[] x, double[] y, StringBuilder svg) {
    svg.append("<polyline fill=\"none\" stroke-width=\"2\" stroke=\"").append(colour);
    svg.append("\" points=\"");
    for (int k = 0; k < curve.x().length; k++) {
      svg.append(k == 0 ? "" : " ").append(px(placeX(curve.x()[k], x)));
      svg.append(',').append(px(placeY(curve.y()[k], y)));
    }
    svg.append("\"/>\n");
    double end = placeY(curve.y()[curve.y().length - 1], y) + 4;
    svg.append(
        text(placeX(curve.x()[curve.x().length - 1], x) + 6, end, "start", colour, curve.name()));
  }

  private static double[] range(List<double[]> values) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double[] some : values) {
      for (double value : some) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
    }
    return new double[] {low > 0 && low < high / 2 ? 0 : low, high};
  }

  private static double placeX(double value, double[] range) {
    return LEFT + (WIDTH - LEFT - RIGHT) * (value - range[0]) / (range[1] - range[0]);
  }

  private static double placeY(double value, double[] range) {
    return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * (value - range[0]) / (range[1] - range[0]);
  }

  static String header(int width, int height) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 "
        + width
        + " "
        + height
        + "\" font-family=\"sans-serif\" font-size=\"12\">\n<rect width=\"100%\" height=\"100%\""
        + " fill=\"#fff\"/>\n";
  }

  static String line(double x1, double y1, double x2, double y2, String colour, double width) {
    return String.format(
        Locale.ROOT,
        "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"%s\" stroke-width=\"%.1f\"/>%n",
        px(x1),
        px(y1),
        px(x2),
        px(y2),
        colour,
        width);
  }

  static String text(double x, double y, String anchor, String colour, String words) {
    String safe = words.replace("&", "&amp;").replace("<", "&lt;");
    return String.format(
        Locale.ROOT,
        "<text x=\"%s\" y=\"%s\" text-anchor=\"%s\" fill=\"%s\">%s</text>%n",
        px(x),
        px(y),
        anchor,
        colour,
        safe);
  }

  static String px(double place) {
    return String.format(Locale.ROOT, "%.1f", place + 0.0);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.2f" : "%.0f", value);
  }
}
