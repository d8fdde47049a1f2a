package org.standproud.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.standproud.mechanics.history.AxisCurve;
import org.standproud.mechanics.history.ForceHistory;
import org.standproud.mechanics.history.RevolutionCurve;
import org.standproud.setup.Band;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;
import org.standproud.setup.units.UnitCode;

/** The force of the cut on the stock, over a turn of the cutter and along the pass. */
public final class ForceChart {

  private final ForceHistory history;
  private final InUnits shown;

  private ForceChart(ForceHistory history, UnitSystem units) {
    this.history = history;
    this.shown = new InUnits(units);
  }

  /**
   * Draws the force over a turn where it is hardest.
   *
   * @param history the force
   * @param units the units of the reader
   * @param name name of its ids, unique in a page
   * @return an SVG element
   */
  public static String turn(ForceHistory history, UnitSystem units, String name) {
    return new ForceChart(history, units).turn(name);
  }

  /**
   * Draws the force along the jaws as the cutter travels.
   *
   * @param history the force
   * @param units the units of the reader
   * @param name name of its ids, unique in a page
   * @return an SVG element
   */
  public static String along(ForceHistory history, UnitSystem units, String name) {
    String title = "Push along the jaws over the pass";
    return new ForceChart(history, units)
        .path(name, title, "push toward +x (− toward −x)", history.path().x());
  }

  /**
   * Draws the force across the jaws as the cutter travels.
   *
   * @param history the force
   * @param units the units of the reader
   * @param name name of its ids, unique in a page
   * @return an SVG element
   */
  public static String across(ForceHistory history, UnitSystem units, String name) {
    String title = "Push across the jaws over the pass";
    return new ForceChart(history, units)
        .path(name, title, "push toward the fixed jaw (− movable)", history.path().y());
  }

  private String turn(String name) {
    RevolutionCurve likely = history.likely();
    List<Double> turn = likely.turnRad().stream().map(UnitCode.DEG::fromSi).toList();
    List<Double> all = new ArrayList<>(forces(likely.xN()));
    all.addAll(forces(likely.yN()));
    all.addAll(forces(likely.zN()));
    List<Double> heaviest = forces(history.heaviest().yN());
    all.addAll(heaviest);
    Chart chart =
        new Chart(
            name,
            "Force on the stock over a turn of the cutter",
            "Where the cut is hardest on the stock, at the likely inputs.",
            Axis.turn(),
            Axis.even("force on the stock, " + shown.unit(QuantityKind.FORCE), all),
            4);
    chart.axes();
    chart.level(0);
    chart.curve(Ink.GHOST, "y-heaviest", turn, heaviest);
    chart.curve(Ink.CURVE, "y", turn, forces(likely.yN()));
    chart.curve(Ink.CURVE_WORST, "x", turn, forces(likely.xN()));
    chart.curve(Ink.CURVE_THIRD, "z", turn, forces(likely.zN()));
    chart.keyLine(Ink.CURVE, "across: + toward the fixed jaw");
    chart.keyLine(Ink.CURVE_WORST, "along: + toward +x");
    chart.keyLine(Ink.CURVE_THIRD, "upright: + up, out of the jaws");
    chart.keyLine(Ink.GHOST, "across, at the heaviest inputs");
    return chart.render();
  }

  private String path(String name, String title, String words, AxisCurve axis) {
    List<Double> places =
        history.path().travelM().stream().map(m -> shown.of(QuantityKind.LENGTH, m)).toList();
    List<Double> worstUp = ends(axis.greatestN(), Band::high);
    List<Double> worstDown = ends(axis.leastN(), Band::low);
    List<Double> all = new ArrayList<>(worstUp);
    all.addAll(worstDown);
    Chart chart =
        new Chart(
            name,
            title,
            "Between the peaks of a turn, likely and at worst, with the mean of a turn.",
            Axis.from(
                "travel of the cutter axis, " + shown.unit(QuantityKind.LENGTH),
                places.get(0),
                places.get(places.size() - 1)),
            Axis.even(words + ", " + shown.unit(QuantityKind.FORCE), all),
            3);
    chart.between(
        Ink.BAND,
        "peaks",
        places,
        ends(axis.leastN(), Band::likely),
        ends(axis.greatestN(), Band::likely));
    chart.axes();
    chart.level(0);
    chart.curve(Ink.CURVE_WORST, "worst-up", places, worstUp);
    chart.curve(Ink.CURVE_WORST, "worst-down", places, worstDown);
    chart.curve(Ink.CURVE, "mean", places, ends(axis.meanN(), Band::likely));
    chart.keyArea(Ink.BAND, "between the peaks of a turn, likely");
    chart.keyLine(Ink.CURVE, "mean of a turn, likely");
    chart.keyLine(Ink.CURVE_WORST, "peaks at worst");
    return chart.render();
  }

  private List<Double> forces(List<Double> newton) {
    return newton.stream().map(n -> shown.of(QuantityKind.FORCE, n)).toList();
  }

  private List<Double> ends(List<Band> bands, ToDoubleFunction<Band> end) {
    return shown.all(QuantityKind.FORCE, bands, end);
  }
}
