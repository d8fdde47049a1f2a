package org.standproud.web.recommendation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.envelope.Column;
import org.standproud.advice.envelope.Envelope;
import org.standproud.advice.envelope.SafeEnvelope;
import org.standproud.drawing.EdgeChart;
import org.standproud.drawing.EnvelopeChart;
import org.standproud.drawing.ForceChart;
import org.standproud.drawing.LobeChart;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.curves.EdgeCurve;
import org.standproud.mechanics.curves.StabilityCurve;
import org.standproud.mechanics.history.ForceHistory;
import org.standproud.mechanics.vibration.Stability;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;

/**
 * The charts of a set-up.
 *
 * @param charts the charts, each with title and remarks
 */
public record Plots(List<Plot> charts) {

  private static final int SPEEDS = 400;
  private static final int PLACES = 41;

  /** Copies the list. */
  public Plots {
    charts = List.copyOf(charts);
  }

  /**
   * A chart.
   *
   * @param title what it shows
   * @param svg the chart; null if it cannot be drawn
   * @param remarks notes, or why it cannot be drawn
   */
  public record Plot(String title, @Nullable String svg, List<String> remarks) {

    /** Copies the list. */
    public Plot {
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * The charts of a set-up; one outside the range of its formulas has a remark instead of a
   * drawing.
   */
  static Plots of(Setup setup, RuleBase ruleBase) {
    SafeEnvelope safe = SafeEnvelope.of(setup, ruleBase);
    List<Plot> charts = new ArrayList<>();
    charts.add(envelope("How deep this cut may go", safe.cut(), "envelope-cut"));
    charts.add(envelope("How deep at other speeds", safe.speed(), "envelope-speed"));
    charts.addAll(forces(setup));
    charts.add(
        drawn(
            "Chatter",
            () ->
                StabilityCurve.of(setup, SPEEDS)
                    .map(
                        c ->
                            new Plot(
                                "Chatter",
                                LobeChart.of(c, setup.units(), "lobes"),
                                c.cautions().stream().map(Stability.Caution::reason).toList()))));
    charts.add(
        drawn(
            "Deflection along the top edge",
            () ->
                EdgeCurve.of(setup, PLACES)
                    .map(c -> EdgeChart.of(c, setup.units(), "edge"))
                    .map(svg -> new Plot("Deflection along the top edge", svg, List.of()))));
    return new Plots(charts);
  }

  private static List<Plot> forces(Setup setup) {
    UnitSystem units = setup.units();
    try {
      return ForceHistory.of(setup)
          .map(
              f ->
                  List.of(
                      new Plot("Push over a turn", ForceChart.turn(f, units, "turn"), List.of()),
                      new Plot(
                          "Push across, over the pass",
                          ForceChart.across(f, units, "across"),
                          List.of()),
                      new Plot(
                          "Push along, over the pass",
                          ForceChart.along(f, units, "along"),
                          List.of())))
          .orElseGet(() -> List.of(missed("Push of the cut")));
    } catch (OutsideValidity outside) {
      return List.of(outside("Push of the cut", outside));
    }
  }

  private static Plot drawn(String title, Supplier<Optional<Plot>> plot) {
    try {
      return plot.get().orElseGet(() -> missed(title));
    } catch (OutsideValidity outside) {
      return outside(title, outside);
    }
  }

  private static Plot envelope(String title, Envelope envelope, String name) {
    Map<String, String> named = new TreeMap<>();
    for (Column column : envelope.columns()) {
      column.limits().stream()
          .limit(1)
          .forEach(card -> named.put(card, envelope.titles().getOrDefault(card, "")));
    }
    List<String> remarks = new ArrayList<>();
    remarks.add("Free to run: " + envelope.holds() + ".");
    named.forEach((card, claim) -> remarks.add(card + ": " + claim + "."));
    return new Plot(title, EnvelopeChart.of(envelope, name), remarks);
  }

  private static Plot missed(String title) {
    return new Plot(title, null, List.of("The cutter passes beside the stock."));
  }

  private static Plot outside(String title, OutsideValidity outside) {
    return new Plot(title, null, List.of("Cannot be worked out here: " + outside.getMessage()));
  }
}
