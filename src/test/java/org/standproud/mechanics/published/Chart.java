package org.standproud.mechanics.published;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * A line chart as SVG: round numbers on both axes, a dark line at nothing, one polyline a curve,
 * its name at its end; names that would stand on one another are moved apart.
 */
final class Chart {

  private static final int WIDTH = 640;
  private static final int HEIGHT = 360;
  private static final int LEFT = 70;
  private static final int RIGHT = 150;
  private static final int TOP = 28;
  private static final int BOTTOM = 50;
  private static final int LINE = 14;
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
    for (double atX : ticks(x)) {
      svg.append(line(placeX(atX, x), TOP, placeX(atX, x), HEIGHT - BOTTOM, "#ddd", 1));
      svg.append(text(placeX(atX, x), HEIGHT - BOTTOM + 18, "middle", "#333", number(atX)));
    }
    for (double atY : ticks(y)) {
      String colour = atY == 0 && y[0] < 0 ? "#666" : "#ddd";
      svg.append(line(LEFT, placeY(atY, y), WIDTH - RIGHT, placeY(atY, y), colour, 1));
      svg.append(text(LEFT - 8, placeY(atY, y) + 4, "end", "#333", number(atY)));
    }
    svg.append(text((LEFT + WIDTH - RIGHT) / 2.0, HEIGHT - 10, "middle", "#000", across));
    svg.append(text(LEFT, TOP - 10, "start", "#000", up));
    for (int c = 0; c < curves.size(); c++) {
      svg.append(polyline(curves.get(c), COLOURS[c % COLOURS.length], x, y));
    }
    names(x, y, svg);
    return svg.append("</svg>\n").toString();
  }

  private static String polyline(Curve curve, String colour, double[] x, double[] y) {
    StringBuilder svg = new StringBuilder("<polyline fill=\"none\" stroke-width=\"2\" stroke=\"");
    svg.append(colour).append("\" points=\"");
    for (int k = 0; k < curve.x().length; k++) {
      svg.append(k == 0 ? "" : " ").append(px(placeX(curve.x()[k], x)));
      svg.append(',').append(px(placeY(curve.y()[k], y)));
    }
    return svg.append("\"/>\n").toString();
  }

  /** The name of each curve at its end, from the top down, each at least a line below the last. */
  private void names(double[] x, double[] y, StringBuilder svg) {
    List<Curve> downward =
        curves.stream().sorted(Comparator.comparingDouble(c -> -c.y()[c.y().length - 1])).toList();
    double last = Double.NEGATIVE_INFINITY;
    for (Curve curve : downward) {
      int end = curve.y().length - 1;
      last = Math.max(last + LINE, placeY(curve.y()[end], y) + 4);
      String colour = COLOURS[curves.indexOf(curve) % COLOURS.length];
      svg.append(text(WIDTH - RIGHT + 6, last, "start", colour, curve.name()));
    }
  }

  /** Least and greatest value, widened to whole ticks; from nothing if that is near. */
  private static double[] range(List<double[]> values) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double[] some : values) {
      low = Math.min(low, Arrays.stream(some).min().orElseThrow());
      high = Math.max(high, Arrays.stream(some).max().orElseThrow());
    }
    low = low > 0 && low < high / 2 ? 0 : low;
    double step = step(low, high);
    return new double[] {
      step * Math.floor(low / step + 1e-9), step * Math.ceil(high / step - 1e-9)
    };
  }

  /** 1, 2 or 5 times a power of ten, so that four to nine ticks stand on the axis. */
  private static double step(double low, double high) {
    double rough = (high - low) / 7;
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double times : new double[] {1, 2, 5}) {
      if (times * power >= rough) {
        return times * power;
      }
    }
    return 10 * power;
  }

  private static double[] ticks(double[] range) {
    double step = step(range[0], range[1]);
    int count = (int) Math.round((range[1] - range[0]) / step);
    return IntStream.rangeClosed(0, count)
        .mapToDouble(k -> step * (Math.round(range[0] / step) + k))
        .toArray();
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
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
