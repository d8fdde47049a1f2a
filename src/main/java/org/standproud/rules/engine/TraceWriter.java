package org.standproud.rules.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.card.Card;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Term;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.Margin;
import org.standproud.rules.trace.MarginFinder;
import org.standproud.rules.trace.Placeholder;
import org.standproud.rules.trace.Reading;
import org.standproud.rules.trace.WhenAsked;
import org.standproud.setup.Band;

/**
 * Writes down what each card came to. Conditions the engine had no need to evaluate are evaluated
 * here by the same objects, and the two must agree.
 */
final class TraceWriter {

  private final Weighing weighing;
  private final Readings readings;
  private final Judgements judgements;
  private final MarginFinder margins;
  private final Map<String, List<Fact>> behind;

  /**
   * Writes for one set-up.
   *
   * @param weighing what the engine found
   * @param behind for each judgement the facts it comes from
   */
  TraceWriter(Weighing weighing, Map<String, List<Fact>> behind) {
    this.behind = behind;
    this.weighing = weighing;
    this.readings = weighing.readings();
    this.judgements = weighing.judgements();
    this.margins = new MarginFinder(readings, judgements);
  }

  CardTrace trace(CompiledCard compiled) {
    Card card = compiled.card();
    List<ConditionTrace> scope = conditions(compiled.preparedScope());
    Truth applies = together(Truth.TRUE, scope);
    boolean elsewhere = applies == Truth.FALSE;
    List<ConditionTrace> when =
        elsewhere
            ? new WhenAsked<>(() -> conditions(compiled.preparedWhen()))
            : conditions(compiled.preparedWhen());
    Truth truth = elsewhere ? applies : together(applies, when);
    boolean expected = card.flags() && truth != Truth.FALSE;
    if (expected != weighing.flagged(compiled)) {
      throw new IllegalStateException("the engine and the condition disagree on " + compiled.id());
    }
    return new CardTrace(
        card,
        Weighing.kind(card, applies, truth),
        truth,
        weighing.severity(compiled),
        weighing.changed(compiled),
        scope,
        when,
        truth == Truth.UNKNOWN || elsewhere ? null : margin(compiled, scope, when),
        placeholders(compiled));
  }

  private static Truth together(Truth truth, List<ConditionTrace> conditions) {
    Truth all = truth;
    for (ConditionTrace condition : conditions) {
      all = all.and(condition.truth());
    }
    return all;
  }

  /** The margin of all of the card: of its scope and conditions, which must all hold. */
  private @Nullable Margin margin(
      CompiledCard compiled, List<ConditionTrace> scope, List<ConditionTrace> when) {
    List<ConditionTrace> all = new ArrayList<>(scope.size() + when.size());
    all.addAll(scope);
    all.addAll(when);
    return margins.ofAll(compiled.all(), all);
  }

  private List<ConditionTrace> conditions(List<Prepared> prepared) {
    ConditionTrace[] traces = new ConditionTrace[prepared.size()];
    for (int i = 0; i < traces.length; i++) {
      traces[i] = condition(prepared.get(i));
    }
    return List.of(traces);
  }

  private ConditionTrace condition(Prepared prepared) {
    Condition condition = prepared.condition();
    if (condition instanceof Condition.Comparison) {
      // The bands which the margin is about decide the truth: they are worked out once.
      Margin margin = margins.of(condition);
      return told(prepared, margin == null ? Truth.UNKNOWN : margin.truth(), margin);
    }
    Truth truth = condition.evaluate(readings, judgements);
    return told(prepared, truth, truth == Truth.UNKNOWN ? null : margins.of(condition));
  }

  private ConditionTrace told(Prepared prepared, Truth truth, @Nullable Margin margin) {
    return new ConditionTrace(
        prepared.text(),
        prepared.words(),
        truth,
        new WhenAsked<>(() -> read(prepared)),
        truth == Truth.UNKNOWN
            ? new WhenAsked<>(() -> prepared.condition().unknowns(readings, judgements))
            : List.of(),
        margin);
  }

  private List<Reading> read(Prepared prepared) {
    return prepared.reads(behind).stream().map(f -> new Reading(f, readings.value(f))).toList();
  }

  private List<Placeholder> placeholders(CompiledCard compiled) {
    return new WhenAsked<>(
        () ->
            compiled.placeholders().stream()
                .map(name -> placeholder(name, compiled.limits().get(name)))
                .toList());
  }

  private Placeholder placeholder(String name, Term.@Nullable Limit limit) {
    if (limit != null) {
      Value value = new Value.Quantity(Band.exactly(limit.quantity().si()));
      return new Placeholder(name, value, limit.quantity().dimension(), limit.text());
    }
    Fact fact = readings.fact(name);
    Fact.Number number = fact.number();
    return new Placeholder(
        name, readings.value(fact), number == null ? null : number.dimension(), null);
  }
}
