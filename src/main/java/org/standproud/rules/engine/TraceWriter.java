package org.standproud.rules.engine;

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
import org.standproud.rules.trace.MarginFinder;
import org.standproud.rules.trace.Placeholder;
import org.standproud.rules.trace.Reading;
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
    Truth applies = compiled.applies(readings);
    Truth truth = compiled.truth(readings, judgements);
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
        compiled.preparedScope().stream().map(this::condition).toList(),
        compiled.preparedWhen().stream().map(this::condition).toList(),
        truth == Truth.UNKNOWN || applies == Truth.FALSE ? null : margins.of(compiled.whole()),
        placeholders(compiled));
  }

  private ConditionTrace condition(Prepared prepared) {
    Condition condition = prepared.condition();
    Truth truth = condition.evaluate(readings, judgements);
    List<Reading> read =
        prepared.reads(behind).stream().map(f -> new Reading(f, readings.value(f))).toList();
    return new ConditionTrace(
        prepared.text(),
        prepared.words(),
        truth,
        read,
        truth == Truth.UNKNOWN ? condition.unknowns(readings, judgements) : List.of(),
        truth == Truth.UNKNOWN ? null : margins.of(condition));
  }

  private List<Placeholder> placeholders(CompiledCard compiled) {
    return compiled.placeholders().stream()
        .map(name -> placeholder(name, compiled.limits().get(name)))
        .toList();
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
