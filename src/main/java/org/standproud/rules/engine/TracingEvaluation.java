package org.standproud.rules.engine;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.card.Levels;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Term;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.LazyList;
import org.standproud.rules.trace.Placeholder;
import org.standproud.setup.Band;

/**
 * An evaluation that keeps the trace of every condition of every card. Each is evaluated once, by
 * the engine on demand or else when the trace is written.
 */
final class TracingEvaluation extends Evaluation {

  private final List<CompiledCard> cards;
  private final Map<String, List<Fact>> behind;
  private final Map<Double, ConditionWriter> writers = new HashMap<>();
  private final Levels levels;

  /** Scope and conditions of each card; null if not evaluated yet. */
  private final @Nullable ConditionTrace[][] traces;

  private final DrawTruth[] applies;

  /**
   * Creates the evaluation of one set-up.
   *
   * @param cards the cards of the rule base
   * @param levels the levels at which cards fire
   * @param behind the facts behind each judgement
   * @param readings the values of the facts
   */
  TracingEvaluation(
      List<CompiledCard> cards, Levels levels, Map<String, List<Fact>> behind, Readings readings) {
    super(readings);
    this.cards = cards;
    this.levels = levels;
    this.behind = behind;
    traces = new ConditionTrace[cards.size()][];
    applies = new DrawTruth[cards.size()];
  }

  /** The condition writer for cards that fire above some share of the draws. */
  private ConditionWriter writer(double level) {
    return writers.computeIfAbsent(
        level, l -> ConditionWriter.of(readings(), this::judged, behind, l));
  }

  @Override
  DrawTruth early(int card) {
    CompiledCard compiled = cards.get(card);
    List<PreparedCondition> prepared = compiled.prepared();
    int scope = compiled.scope().size();
    ConditionTrace[] written = new ConditionTrace[prepared.size()];
    traces[card] = written;
    ConditionWriter writer = writer(compiled.level(levels));
    DrawTruth truth = judge(writer, prepared, written, 0, scope, DrawTruth.TRUE);
    applies[card] = truth;
    return truth.isFalse() ? truth : judge(writer, prepared, written, scope, written.length, truth);
  }

  /** Evaluates conditions on facts alone. */
  private static DrawTruth judge(
      ConditionWriter writer,
      List<PreparedCondition> prepared,
      @Nullable ConditionTrace[] written,
      int from,
      int to,
      DrawTruth before) {
    DrawTruth truth = before;
    for (int i = from; i < to; i++) {
      PreparedCondition condition = prepared.get(i);
      if (!condition.judges()) {
        ConditionTrace trace = writer.trace(condition);
        written[i] = trace;
        truth = truth.and(trace.draws());
      }
    }
    return truth;
  }

  @Override
  DrawTruth whole(int card, Judgements judgements) {
    double level = cards.get(card).level(levels);
    return complete(card, ConditionWriter.of(readings(), judgements, behind, level), true);
  }

  /** Evaluates the rest, or all conditions on judgements again, and combines everything. */
  private DrawTruth complete(int card, ConditionWriter writer, boolean again) {
    List<PreparedCondition> prepared = cards.get(card).prepared();
    @Nullable ConditionTrace[] written = traces[card];
    DrawTruth truth = DrawTruth.TRUE;
    for (int i = 0; i < written.length; i++) {
      ConditionTrace trace = written[i];
      if (trace == null || (again && prepared.get(i).judges())) {
        trace = writer.trace(prepared.get(i));
        written[i] = trace;
      }
      truth = truth.and(trace.draws());
    }
    return truth;
  }

  /**
   * The trace of a card, after the engine has run.
   *
   * @throws IllegalStateException if the engine and the conditions disagree
   */
  CardTrace trace(int card, SeverityResolver weighing) {
    CompiledCard compiled = cards.get(card);
    if (traces[card] == null) {
      early(card);
    }
    boolean elsewhere = applies[card].isFalse();
    double level = weighing.level(card);
    ConditionWriter writer = writer(level);
    if (!elsewhere && level != compiled.level(levels)) {
      // Written again, because margins depend on the level.
      Arrays.fill(traces[card], null);
    }
    DrawTruth truth = elsewhere ? DrawTruth.FALSE : complete(card, writer, false);
    if ((compiled.card().flags() && !truth.isFalse()) != flagged(card)) {
      throw new IllegalStateException("the engine and the condition disagree on " + compiled.id());
    }
    ConditionTrace[] written = traces[card];
    int scope = compiled.scope().size();
    return new CardTrace(
        compiled.card(),
        SeverityResolver.kind(compiled.card(), applies[card], truth, level),
        truth,
        weighing.severity(card),
        level,
        weighing.changed(card),
        list(written, 0, scope),
        elsewhere ? unasked(compiled, writer) : list(written, scope, written.length),
        truth.truth() == Truth.UNKNOWN || elsewhere
            ? null
            : writer.margins().ofAll(compiled.all(), Arrays.asList(written)),
        placeholders(compiled),
        null);
  }

  /** The conditions of a card that does not apply. */
  private static List<ConditionTrace> unasked(CompiledCard compiled, ConditionWriter writer) {
    int scope = compiled.scope().size();
    return new LazyList<>() {
      @Override
      protected List<ConditionTrace> made() {
        return compiled.prepared().stream().skip(scope).map(writer::trace).toList();
      }
    };
  }

  private static List<ConditionTrace> list(ConditionTrace[] all, int from, int to) {
    return switch (to - from) {
      case 0 -> List.of();
      case 1 -> List.of(all[from]);
      case 2 -> List.of(all[from], all[from + 1]);
      default -> List.of(Arrays.copyOfRange(all, from, to));
    };
  }

  private List<Placeholder> placeholders(CompiledCard compiled) {
    return new LazyList<>() {
      @Override
      protected List<Placeholder> made() {
        return compiled.placeholders().stream()
            .map(name -> placeholder(name, compiled.limits().get(name)))
            .toList();
      }
    };
  }

  private Placeholder placeholder(String name, Term.@Nullable Limit limit) {
    if (limit != null) {
      Value value = new Value.Quantity(Band.exactly(limit.quantity().si()));
      return new Placeholder(name, value, limit.quantity().dimension(), limit.text());
    }
    Fact fact = readings().fact(name);
    Fact.Number number = fact.number();
    return new Placeholder(
        name, readings().value(fact), number == null ? null : number.dimension(), null);
  }
}
