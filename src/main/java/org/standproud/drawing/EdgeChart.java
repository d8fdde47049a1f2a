package org.standproud.drawing;

import java.util.ArrayList;
import java.util.List;
import org.standproud.mechanics.curves.EdgeCurve;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;

/** How far the top edge gives along its length. */
public final class EdgeChart {

  private EdgeChart() {}

  /**
   * Draws it.
   *
   * @param edge the edge
   * @param units the units of the reader
   * @param name name of its ids, unique in a page
   * @return an SVG element
   */
  public static String of(EdgeCurve edge, UnitSystem units, String name) {
    InUnits shown = new InUnits(units);
    QuantityKind small = QuantityKind.LENGTH;
    List<Double> xs = shown.all(QuantityKind.LENGTH, edge.points(), p -> p.xM());
    List<Double> low = shown.all(small, edge.points(), p -> p.underCutterM().low());
    List<Double> likely = shown.all(small, edge.points(), p -> p.underCutterM().likely());
    List<Double> high = shown.all(small, edge.points(), p -> p.underCutterM().high());
    List<Double> bent = shown.all(small, edge.points(), p -> p.cutterAtEndM());
    List<Double> all = new ArrayList<>(high);
    all.addAll(bent);
    Chart chart =
        new Chart(
            name,
            "Deflection of the top edge along its length",
            description(edge, units),
            Axis.from(
                "along the jaws, " + shown.unit(QuantityKind.LENGTH),
                xs.get(0),
                xs.get(xs.size() - 1)),
            Axis.even("deflection, " + shown.unit(small), all),
            3);
    chart.between(Ink.BAND, "under-cutter-band", xs, low, high);
    chart.axes();
    chart.curve(Ink.CURVE, "under-cutter", xs, likely);
    chart.curve(Ink.CURVE_WORST, "cutter-at-end", xs, bent);
    chart.keyLine(Ink.CURVE, "under the cutter, likely");
    chart.keyArea(Ink.BAND, "the same between its least and greatest");
    chart.keyLine(Ink.CURVE_WORST, "shape of the edge, cutter at the +x end");
    return chart.render();
  }

  private static String description(EdgeCurve edge, UnitSystem units) {
    Figures figures = new Figures(units);
    EdgeCurve.Point middle = edge.points().get(edge.points().size() / 2);
    EdgeCurve.Point end = edge.points().get(edge.points().size() - 1);
    return "Under the cutter the edge gives "
        + figures.deflection(middle.underCutterM().high())
        + " in the middle at worst, and "
        + figures.deflection(end.underCutterM().high())
        + " at the end.";
  }
}
