package org.standproud.drawing;

import java.util.List;
import org.standproud.mechanics.curves.StabilityCurve;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;

/** How deep the cut may go at each spindle speed before the stock chatters. */
public final class LobeChart {

  /** Space above the interesting range: the tops of the lobes have no end. */
  private static final double ROOM = 3;

  private LobeChart() {}

  /**
   * Draws it.
   *
   * @param curve the limit over speed
   * @param units the units of the reader
   * @param name name of its ids, unique in a page
   * @return an SVG element
   */
  public static String of(StabilityCurve curve, UnitSystem units, String name) {
    InUnits shown = new InUnits(units);
    List<Double> speeds = shown.all(QuantityKind.SPINDLE_SPEED, curve.points(), p -> p.revPerS());
    List<Double> least = shown.all(QuantityKind.LENGTH, curve.points(), p -> p.depthM().low());
    List<Double> likely = shown.all(QuantityKind.LENGTH, curve.points(), p -> p.depthM().likely());
    double now = shown.of(QuantityKind.LENGTH, curve.depthM());
    double speed = shown.of(QuantityKind.SPINDLE_SPEED, curve.revPerS());
    double foot = Math.min(now, least.stream().mapToDouble(d -> d).min().orElse(now)) / ROOM;
    double most = ROOM * Math.max(now, shown.of(QuantityKind.LENGTH, curve.leastDepthM().high()));
    Chart chart =
        new Chart(
            name,
            "Depth at which the stock begins to chatter, over spindle speed",
            description(curve, units),
            Axis.ratio("spindle speed, " + shown.unit(QuantityKind.SPINDLE_SPEED), speeds),
            Axis.ratio("axial depth, " + shown.unit(QuantityKind.LENGTH), List.of(foot, most)),
            3);
    List<Double> top = speeds.stream().map(s -> most * ROOM).toList();
    chart.between(Ink.CHATTER, "chatters", speeds, likely, top);
    chart.axes();
    chart.curve(Ink.CURVE, "likely", speeds, likely);
    chart.curve(Ink.CURVE_WORST, "least", speeds, least);
    chart.here(speed, now, "this cut");
    chart.keyArea(Ink.CHATTER, "chatters, as the hold is likely to be");
    chart.keyLine(Ink.CURVE, "limit, likely");
    chart.keyLine(Ink.CURVE_WORST, "limit at the worst ends of what is not known");
    return chart.render();
  }

  private static String description(StabilityCurve curve, UnitSystem units) {
    Figures figures = new Figures(units);
    return "No speed chatters below "
        + figures.length(curve.leastDepthM().low())
        + ". This cut is "
        + figures.length(curve.depthM())
        + " deep at "
        + figures.of(QuantityKind.SPINDLE_SPEED, curve.revPerS())
        + ".";
  }
}
