package org.standproud.drawing;

import java.util.ArrayList;
import java.util.List;
import org.standproud.drawing.Svg.Anchor;

/**
 * A chart on two axes, with a key below it. Curves are distinguished by their dashes, so that it
 * reads in black and white, and its lettering is large enough for a narrow page.
 */
final class Chart {

  private static final double WIDTH = 420;
  private static final double LEFT = 58;
  private static final double RIGHT = 14;
  private static final double TOP = 28;
  private static final double PLOT = 210;
  private static final double FLOOR = TOP + PLOT;
  private static final double AXIS_ROOM = 44;
  private static final double KEY_ROW = 19;
  private static final double KEY_SAMPLE = 34;
  private static final double TICK = 5;
  private static final double LEAST_BETWEEN_TICKS = 34;

  private final Axis across;
  private final Axis up;
  private final Svg svg;
  private final int keys;
  private int keyed;

  /**
   * An empty chart.
   *
   * @param name prefix of its ids, unique in a page
   * @param title what it shows
   * @param description the same as text, for screen readers
   * @param across the axis to the right
   * @param up the axis upward
   * @param keys number of lines in the key
   */
  Chart(String name, String title, String description, Axis across, Axis up, int keys) {
    this.across = across;
    this.up = up;
    this.keys = keys;
    double height = FLOOR + AXIS_ROOM + keys * KEY_ROW + 4;
    this.svg = new Svg(name, WIDTH, height, title, description);
  }

  double x(double value) {
    return LEFT + (WIDTH - LEFT - RIGHT) * across.part(value);
  }

  double y(double value) {
    return FLOOR - PLOT * up.part(value);
  }

  /** The value at the bottom of the upward axis. */
  double floor() {
    return up.least();
  }

  /** A curve through points, one of each list. */
  void curve(Ink ink, String part, List<Double> xs, List<Double> ys) {
    svg.polyline(ink, part, places(xs, ys));
  }

  /** The area between two curves over the same places. */
  void between(Ink ink, String part, List<Double> xs, List<Double> lows, List<Double> highs) {
    List<Double> around = new ArrayList<>(xs);
    List<Double> edge = new ArrayList<>(lows);
    for (int i = xs.size() - 1; i >= 0; i--) {
      around.add(xs.get(i));
      edge.add(highs.get(i));
    }
    svg.polygon(ink, part, places(around, edge));
  }

  private double[] places(List<Double> xs, List<Double> ys) {
    double[] places = new double[2 * xs.size()];
    for (int i = 0; i < xs.size(); i++) {
      places[2 * i] = x(xs.get(i));
      places[2 * i + 1] = y(ys.get(i));
    }
    return places;
  }

  /** A level line over the whole chart. */
  void level(double at) {
    svg.line(Ink.VISE, LEFT, y(at), WIDTH - RIGHT, y(at));
  }

  /** The position of this set-up: a ring with cross hairs, with its name beside it. */
  void here(double atX, double atY, String words) {
    double x = x(atX);
    double y = y(atY);
    svg.line(Ink.AXIS, x, TOP, x, FLOOR);
    svg.line(Ink.AXIS, LEFT, y, WIDTH - RIGHT, y);
    svg.circle(Ink.TOUCH, "here", x, y, 6);
    svg.circle(Ink.FORCE, "here-centre", x, y, 2);
    boolean right = x < (LEFT + WIDTH - RIGHT) / 2;
    double above = y - TOP > 30 ? y - 10 : y + 22;
    svg.patchedText(right ? x + 10 : x - 10, above, right ? Anchor.START : Anchor.END, words);
  }

  /** Words at a place of the chart. */
  void label(double atX, double atY, double lift, Anchor anchor, String words) {
    double y = y(atY) - lift;
    double inside = y < TOP + Svg.LETTER ? y(atY) + lift + Svg.LETTER : y;
    svg.patchedText(x(atX), inside, anchor, words);
  }

  /** Words in the middle of the chart. */
  void middle(String words) {
    svg.patchedText((LEFT + WIDTH - RIGHT) / 2, TOP + PLOT / 2, Anchor.MIDDLE, words);
  }

  /** A line of the key that shows a line of the chart. */
  void keyLine(Ink ink, String words) {
    double y = keyRow();
    svg.line(ink, LEFT, y - 4, LEFT + KEY_SAMPLE, y - 4);
    svg.text(LEFT + KEY_SAMPLE + 8, y, Anchor.START, words);
  }

  /** A line of the key that shows an area of the chart. */
  void keyArea(Ink ink, String words) {
    double y = keyRow();
    svg.rect(ink, "key", LEFT, y - 11, LEFT + KEY_SAMPLE, y + 1);
    svg.text(LEFT + KEY_SAMPLE + 8, y, Anchor.START, words);
  }

  private double keyRow() {
    if (keyed == keys) {
      throw new IllegalStateException("the key has room for " + keys + " lines");
    }
    keyed++;
    return FLOOR + AXIS_ROOM + keyed * KEY_ROW - 6;
  }

  /** The frame, the ticks and what the axes measure; drawn after the areas, before the curves. */
  void axes() {
    svg.line(Ink.VISE, LEFT, FLOOR, WIDTH - RIGHT, FLOOR);
    svg.line(Ink.VISE, LEFT, FLOOR, LEFT, TOP);
    double lastX = Double.NEGATIVE_INFINITY;
    for (double tick : across.ticks()) {
      double x = x(tick);
      svg.line(Ink.VISE, x, FLOOR, x, FLOOR + TICK);
      if (x - lastX >= LEAST_BETWEEN_TICKS) {
        svg.text(x, FLOOR + TICK + 14, Anchor.MIDDLE, Axis.figures(tick));
        lastX = x;
      }
    }
    for (double tick : up.ticks()) {
      double y = y(tick);
      svg.line(Ink.GRID, LEFT, y, WIDTH - RIGHT, y);
      svg.text(LEFT - 7, y + Svg.LETTER * 0.35, Anchor.END, Axis.figures(tick));
    }
    svg.text((LEFT + WIDTH - RIGHT) / 2, FLOOR + AXIS_ROOM - 6, Anchor.MIDDLE, across.words());
    svg.text(4, TOP - 12, Anchor.START, up.words());
  }

  String render() {
    return svg.render();
  }
}
