package org.standproud.rules.engine;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
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
 * A hearing that keeps what every condition of every card came to. Each is judged once, by the
 * engine if it asks and else when the trace is written.
 */
final class TracingEvaluation extends Evaluation {

  private final List<CompiledCard> cards;
  private final Map<String, List<Fact>> behind;
  private final ConditionWriter onFacts;

  /** Scope and conditions of each card heard; null what was not judged yet. */
  private final @Nullable ConditionTrace[][] traces;

  private final Truth[] applies;

  /**
   * A hearing of one set-up.
   *
   * @param cards the cards of the rule base
   * @param behind for each judgement the facts it comes from
   * @param readings the values of the facts
   */
  TracingEvaluation(List<CompiledCard> cards, Map<String, List<Fact>> behind, Readings readings) {
    super(readings);
    this.cards = cards;
    this.behind = behind;
    onFacts = ConditionWriter.of(readings, this::judged, behind);
    traces = new ConditionTrace[cards.size()][];
    applies = new Truth[cards.size()];
  }

  @Override
  Truth early(int card) {
    CompiledCard compiled = cards.get(card);
    List<PreparedCondition> prepared = compiled.prepared();
    int scope = compiled.scope().size();
    ConditionTrace[] said = new ConditionTrace[prepared.size()];
    traces[card] = said;
    Truth truth = judge(prepared, said, 0, scope, Truth.TRUE);
    applies[card] = truth;
    return truth == Truth.FALSE ? truth : judge(prepared, said, scope, said.length, truth);
  }

  /** Judges what hangs on facts alone. */
  private Truth judge(
      List<PreparedCondition> prepared,
      @Nullable ConditionTrace[] said,
      int from,
      int to,
      Truth before) {
    Truth truth = before;
    for (int i = from; i < to; i++) {
      PreparedCondition condition = prepared.get(i);
      if (!condition.judges()) {
        ConditionTrace trace = onFacts.trace(condition);
        said[i] = trace;
        truth = truth.and(trace.truth());
      }
    }
    return truth;
  }

  @Override
  Truth whole(int card, Judgements judgements) {
    return complete(card, ConditionWriter.of(readings(), judgements, behind), true);
  }

  /** Judges what is left, or all that hangs on judgements again, and puts all together. */
  private Truth complete(int card, ConditionWriter writer, boolean again) {
    List<PreparedCondition> prepared = cards.get(card).prepared();
    @Nullable ConditionTrace[] said = traces[card];
    Truth truth = Truth.TRUE;
    for (int i = 0; i < said.length; i++) {
      ConditionTrace trace = said[i];
      if (trace == null || (again && prepared.get(i).judges())) {
        trace = writer.trace(prepared.get(i));
        said[i] = trace;
      }
      truth = truth.and(trace.truth());
    }
    return truth;
  }

  /**
   * The trace of a card, once the engine is done.
   *
   * @throws IllegalStateException if the engine made something else of it than its conditions say
   */
  CardTrace trace(int card, SeverityResolver weighing) {
    CompiledCard compiled = cards.get(card);
    if (traces[card] == null) {
      early(card);
    }
    boolean elsewhere = applies[card] == Truth.FALSE;
    Truth truth = elsewhere ? Truth.FALSE : complete(card, onFacts, false);
    if ((compiled.card().flags() && truth != Truth.FALSE) != flagged(card)) {
      throw new IllegalStateException("the engine and the condition disagree on " + compiled.id());
    }
    ConditionTrace[] said = traces[card];
    int scope = compiled.scope().size();
    return new CardTrace(
        compiled.card(),
        SeverityResolver.kind(compiled.card(), applies[card], truth),
        truth,
        weighing.severity(card),
        weighing.changed(card),
        list(said, 0, scope),
        elsewhere ? unasked(compiled) : list(said, scope, said.length),
        truth == Truth.UNKNOWN || elsewhere
            ? null
            : onFacts.margins().ofAll(compiled.all(), Arrays.asList(said)),
        placeholders(compiled));
  }

  /** The conditions of a card that is about something else. */
  private List<ConditionTrace> unasked(CompiledCard compiled) {
    int scope = compiled.scope().size();
    return new LazyList<>() {
      @Override
      protected List<ConditionTrace> made() {
        return compiled.prepared().stream().skip(scope).map(onFacts::trace).toList();
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
