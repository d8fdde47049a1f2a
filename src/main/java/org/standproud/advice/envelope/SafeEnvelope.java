package org.standproud.advice.envelope;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.standproud.advice.Wording;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.Trials;
import org.standproud.rules.card.Protects;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardKind;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.units.QuantityKind;

/**
 * The safe envelopes of a set-up: how deep it may cut, over feed or width and over the speed.
 *
 * @param cut depth over feed per tooth on a top edge, over radial depth on a broad side; inside, no
 *     stop fails or is open
 * @param speed depth over the speeds of the machine; at each, no stop fails or is open and no
 *     caution is about vibration
 */
public record SafeEnvelope(Envelope cut, Envelope speed) {

  /** Default number of columns and levels of an envelope. */
  public static final int FINENESS = 40;

  private static final double LEAST_DEPTH_M = 0.05e-3;

  /**
   * The envelopes of a set-up with the default number of columns.
   *
   * @param setup the set-up
   * @param ruleBase the rule base
   */
  public static SafeEnvelope of(Setup setup, RuleBase ruleBase) {
    return of(setup, new Trials(ruleBase), FINENESS);
  }

  /**
   * The envelopes of a set-up.
   *
   * @param setup the set-up
   * @param trials judged set-ups
   * @param fineness number of columns and of levels, at least 2
   */
  public static SafeEnvelope of(Setup setup, Trials trials, int fineness) {
    return new SafeEnvelope(cut(setup, trials, fineness), speed(setup, trials, fineness));
  }

  /** Depth over feed per tooth or over radial depth. */
  public static Envelope cut(Setup setup, Trials trials, int fineness) {
    EnvelopeAxis across =
        setup.cut().operation() == Operation.TOP_EDGE
            ? EnvelopeAxis.FEED_PER_TOOTH
            : EnvelopeAxis.RADIAL_DEPTH;
    return envelope(
        setup,
        across,
        "no stop fails or is open",
        judged -> List.copyOf(judged.stops()),
        trials,
        fineness);
  }

  /** Depth over the spindle speed. */
  public static Envelope speed(Setup setup, Trials trials, int fineness) {
    return envelope(
        setup,
        EnvelopeAxis.SPINDLE_SPEED,
        "no stop fails or is open and no caution speaks of vibration",
        judged -> stopsAndVibration(judged, trials.ruleBase()),
        trials,
        fineness);
  }

  private static List<String> stopsAndVibration(Judged judged, RuleBase ruleBase) {
    return judged.findings().stream()
        .filter(
            f ->
                f.severity() == Severity.STOP
                    || f.severity() == Severity.CAUTION
                        && ruleBase.card(f.id()).card().protects() == Protects.VIBRATION)
        .map(CardKind::id)
        .toList();
  }

  /** Levels of axial depth in m, evenly spaced by ratio, as deep as edge and stick-out allow. */
  static double[] depthsM(Setup setup, int fineness) {
    double most = Math.min(setup.cutter().greatestDepthM(), setup.stickOutM());
    double deepest = Math.max(2 * LEAST_DEPTH_M, Math.max(most, setup.cut().axialDepthM()));
    return EnvelopeAxis.spaced(LEAST_DEPTH_M, deepest, fineness);
  }

  private static Envelope envelope(
      Setup setup,
      EnvelopeAxis across,
      String holds,
      BoundaryTrace.Objections objections,
      Trials trials,
      int fineness) {
    int before = trials.count();
    double[] depthsM = depthsM(setup, fineness);
    BoundaryTrace trace =
        new BoundaryTrace(
            setup, across, objections, trials, across.columns(setup, fineness), depthsM);
    List<Column> columns =
        trace.edges().stream().map(edge -> column(edge, across, depthsM, setup)).toList();
    Set<String> always = always(trace.edges());
    return new Envelope(
        across.words(),
        across.kind().unit(setup.units()).code(),
        QuantityKind.LENGTH.unit(setup.units()).code(),
        holds,
        across.why(),
        columns,
        shown(across.kind(), across.of(setup), setup),
        shown(QuantityKind.LENGTH, setup.cut().axialDepthM(), setup),
        objections.against(trials.of(setup)).isEmpty(),
        List.copyOf(always),
        titles(columns, trials.ruleBase()),
        trace.steady(),
        trials.count() - before);
  }

  private static Column column(
      BoundaryTrace.Edge edge, EnvelopeAxis across, double[] depthsM, Setup setup) {
    int free = edge.free();
    return new Column(
        shown(across.kind(), edge.at(), setup),
        free == 0 ? null : (Double) shown(QuantityKind.LENGTH, depthsM[free - 1], setup),
        free == depthsM.length ? null : (Double) shown(QuantityKind.LENGTH, depthsM[free], setup),
        edge.limits());
  }

  /** Cards against the least depth at every column, if there is no free column at all. */
  private static Set<String> always(List<BoundaryTrace.Edge> edges) {
    if (edges.stream().anyMatch(edge -> edge.free() > 0)) {
      return Set.of();
    }
    Set<String> always = new LinkedHashSet<>(edges.get(0).limits());
    edges.forEach(edge -> always.retainAll(edge.limits()));
    return always;
  }

  private static Map<String, String> titles(List<Column> columns, RuleBase ruleBase) {
    List<String> named = new ArrayList<>();
    columns.forEach(column -> named.addAll(column.limits()));
    return ruleBase.cards().stream()
        .filter(card -> named.contains(card.id()))
        .collect(Collectors.toMap(card -> card.id(), card -> card.card().title()));
  }

  private static double shown(QuantityKind kind, double si, Setup setup) {
    return new Wording(setup.units()).shown(kind, si);
  }
}
