package org.standproud.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.envelope.Column;
import org.standproud.advice.envelope.Envelope;
import org.standproud.drawing.Svg.Anchor;

/**
 * How far a cut may go: the free region on logarithmic axes, never higher between two columns than
 * at the lower of them, the card that bounds each stretch of its edge, and the proposed cut.
 */
public final class EnvelopeChart {

  private static final double NAMES_APART = 16;

  private final Envelope envelope;
  private final Chart chart;

  private EnvelopeChart(Envelope envelope, String name) {
    this.envelope = envelope;
    List<Double> depths = new ArrayList<>(List.of(envelope.nowDepth()));
    List<Double> overs = new ArrayList<>(List.of(envelope.now()));
    for (Column column : envelope.columns()) {
      overs.add(column.at());
      add(depths, column.greatestDepth());
      add(depths, column.refusedDepth());
    }
    this.chart =
        new Chart(
            name,
            "Greatest axial depth over " + envelope.over(),
            description(envelope),
            Axis.ratio(envelope.over() + ", " + envelope.overUnit(), overs),
            Axis.ratio("axial depth, " + envelope.depthUnit(), depths),
            2);
  }

  /**
   * Draws it.
   *
   * @param envelope the envelope
   * @param name name of its ids, unique in a page
   * @return an SVG element
   */
  public static String of(Envelope envelope, String name) {
    return new EnvelopeChart(envelope, name).draw();
  }

  private static void add(List<Double> depths, @Nullable Double depth) {
    if (depth != null) {
      depths.add(depth);
    }
  }

  private static String description(Envelope envelope) {
    String where = envelope.nowInside() ? "inside" : "outside";
    return "Axial depth up to which " + envelope.holds() + ". The cut as it is lies " + where + ".";
  }

  private String draw() {
    boolean any = drawFree();
    chart.axes();
    drawLimits();
    if (!any) {
      chart.middle("no depth is free at any of these");
    }
    chart.here(envelope.now(), envelope.nowDepth(), "this cut");
    chart.keyArea(Ink.FREE, "free to run");
    chart.keyLine(Ink.CURVE, "first depth refused, and the card that refuses");
    return chart.render();
  }

  private boolean drawFree() {
    List<Column> columns = envelope.columns();
    double least = chart.floor();
    boolean any = false;
    for (int i = 0; i + 1 < columns.size(); i++) {
      Double here = columns.get(i).greatestDepth();
      Double next = columns.get(i + 1).greatestDepth();
      if (here != null && next != null) {
        double top = Math.min(here, next);
        List<Double> xs = List.of(columns.get(i).at(), columns.get(i + 1).at());
        chart.between(Ink.FREE, "free", xs, List.of(least, least), List.of(top, top));
        any = true;
      }
    }
    return any;
  }

  /** Each stretch of the edge that one card bounds, with its name once. */
  private void drawLimits() {
    List<Double> xs = new ArrayList<>();
    List<Double> ys = new ArrayList<>();
    String last = "";
    int names = 0;
    for (Column column : envelope.columns()) {
      Double refused = column.refusedDepth();
      String limit = column.limits().isEmpty() ? "" : column.limits().get(0);
      if (!limit.equals(last) || refused == null) {
        names += drawStretch(xs, ys, last, names);
      }
      if (refused != null) {
        xs.add(column.at());
        ys.add(refused);
      }
      last = limit;
    }
    drawStretch(xs, ys, last, names);
  }

  /** Neighbouring names are at two heights, so that they do not overlap. */
  private int drawStretch(List<Double> xs, List<Double> ys, String limit, int names) {
    if (xs.isEmpty()) {
      return 0;
    }
    chart.curve(Ink.CURVE, "edge", xs, ys);
    double at = xs.get(0);
    boolean right = chart.x(at) < 260;
    chart.label(
        at, ys.get(0), 8 + (names % 3) * NAMES_APART, right ? Anchor.START : Anchor.END, limit);
    xs.clear();
    ys.clear();
    return 1;
  }
}
