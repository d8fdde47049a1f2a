package org.standproud.web.counsel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.envelope.Column;
import org.standproud.advice.envelope.Envelope;
import org.standproud.advice.envelope.SafeEnvelope;
import org.standproud.drawing.EdgeChart;
import org.standproud.drawing.EnvelopeChart;
import org.standproud.drawing.LobeChart;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.curves.EdgeCurve;
import org.standproud.mechanics.curves.StabilityCurve;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;

/**
 * The charts of a set-up.
 *
 * @param charts each with what it shows and what to know about it
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
   * @param remarks what to know about it, or why it cannot be drawn
   */
  public record Plot(String title, @Nullable String svg, List<String> remarks) {

    /** Copies the list. */
    public Plot {
      remarks = List.copyOf(remarks);
    }
  }

  /** The charts of a set-up; one that lies outside the formulas is told, not drawn. */
  static Plots of(Setup setup, RuleBase ruleBase) {
    SafeEnvelope safe = SafeEnvelope.of(setup, ruleBase);
    return new Plots(
        List.of(
            envelope("How deep this cut may go", safe.cut(), "envelope-cut"),
            envelope("How deep at other speeds", safe.speed(), "envelope-speed"),
            lobes(setup),
            edge(setup)));
  }

  private static Plot envelope(String title, Envelope envelope, String name) {
    Map<String, String> named = new TreeMap<>();
    for (Column column : envelope.columns()) {
      column.limits().stream()
          .limit(1)
          .forEach(card -> named.put(card, envelope.titles().getOrDefault(card, "")));
    }
    List<String> remarks = new ArrayList<>();
    remarks.add("Free to run means that " + envelope.holds() + ".");
    named.forEach((card, claim) -> remarks.add(card + ": " + claim + "."));
    return new Plot(title, EnvelopeChart.of(envelope, name), remarks);
  }

  private static Plot lobes(Setup setup) {
    String title = "Chatter";
    try {
      Optional<StabilityCurve> curve = StabilityCurve.of(setup, SPEEDS);
      return curve
          .map(
              c ->
                  new Plot(
                      title,
                      LobeChart.of(c, setup.units(), "lobes"),
                      c.cautions().stream().map(caution -> caution.reason()).toList()))
          .orElseGet(() -> missed(title));
    } catch (OutsideValidity outside) {
      return outside(title, outside);
    }
  }

  private static Plot edge(Setup setup) {
    String title = "Give of the top edge";
    try {
      return EdgeCurve.of(setup, PLACES)
          .map(c -> new Plot(title, EdgeChart.of(c, setup.units(), "edge"), List.of()))
          .orElseGet(() -> missed(title));
    } catch (OutsideValidity outside) {
      return outside(title, outside);
    }
  }

  private static Plot missed(String title) {
    return new Plot(title, null, List.of("The cutter passes beside the stock."));
  }

  private static Plot outside(String title, OutsideValidity outside) {
    return new Plot(title, null, List.of("Outside the formulas: " + outside.getMessage()));
  }
}
