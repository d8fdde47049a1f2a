package org.standproud.rules.beside;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.SeverityChange;
import org.standproud.rules.card.Written;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.Margin;
import org.standproud.rules.trace.MarginFinder;

/** One set-up before the cards of a loop. For one thread and one set-up. */
final class LoopEvaluation {

  private static final Written UNPLACED = new Written("", 1, 1);

  private final CardLoop loop;
  private final Readings readings;
  private final Map<String, DrawTruth> judged = new HashMap<>();
  private final Map<Double, MarginFinder> finders = new HashMap<>();
  private final DrawTruth[] applies;
  private final DrawTruth[] truths;

  /** Scope and conditions of each card, or null where no trace is kept. */
  private final @Nullable List<List<ConditionTrace>> traces;

  LoopEvaluation(CardLoop loop, FactTable facts, Evidence evidence, boolean traced) {
    this.loop = loop;
    readings = new Readings(facts, evidence);
    applies = new DrawTruth[loop.size()];
    truths = new DrawTruth[loop.size()];
    traces = traced ? new ArrayList<>() : null;
    for (int i = 0; traced && i < truths.length; i++) {
      traces.add(List.of());
    }
  }

  private DrawTruth judgement(String name) {
    return judged.getOrDefault(name, DrawTruth.UNKNOWN);
  }

  private MarginFinder margins(double level) {
    return finders.computeIfAbsent(level, l -> new MarginFinder(readings, this::judgement, l));
  }

  /** In which draws a card holds, its judgement kept for those that read it. */
  DrawTruth judge(int card) {
    if (traces == null) {
      applies[card] = loop.scope(card).evaluate(readings, this::judgement);
      truths[card] =
          applies[card].isFalse()
              ? DrawTruth.FALSE
              : applies[card].and(loop.when(card).evaluate(readings, this::judgement));
    } else {
      trace(card, loop.speaksAbove(card));
    }
    Written derives = loop.order.get(card).card().derives();
    if (derives != null) {
      judged.put(derives.text(), truths[card]);
    }
    return truths[card];
  }

  private void trace(int card, double level) {
    CompiledCard compiled = loop.order.get(card);
    List<ConditionTrace> said = new ArrayList<>();
    MarginFinder margins = margins(level);
    applies[card] = trace(compiled.scope(), margins, DrawTruth.TRUE, said);
    truths[card] =
        applies[card].isFalse()
            ? DrawTruth.FALSE
            : trace(compiled.when(), margins, applies[card], said);
    traces.set(card, said);
  }

  private DrawTruth trace(
      List<Condition> conditions,
      MarginFinder margins,
      DrawTruth before,
      List<ConditionTrace> said) {
    DrawTruth all = before;
    for (Condition condition : conditions) {
      ConditionTrace one = trace(condition, margins);
      said.add(one);
      all = all.and(one.draws());
    }
    return all;
  }

  private ConditionTrace trace(Condition condition, MarginFinder margins) {
    Margin margin = null;
    DrawTruth truth;
    if (condition instanceof Condition.Comparison) {
      margin = margins.of(condition);
      truth = margin == null ? DrawTruth.UNKNOWN : margin.draws();
    } else {
      truth = condition.evaluate(readings, this::judgement);
      margin = truth.truth() == Truth.UNKNOWN ? null : margins.of(condition);
    }
    return new ConditionTrace(UNPLACED, "", truth, List.of(), List.of(), margin);
  }

  /** What every card came to, once each was judged. */
  List<CardKind> kinds() {
    Map<String, Severity> changed = changed();
    List<CardKind> kinds = new ArrayList<>(truths.length);
    for (int i = 0; i < truths.length; i++) {
      kinds.add(kind(i, changed));
    }
    return silenced(kinds);
  }

  /** The trace of every card, once each was judged. */
  List<LoopTrace> traces() {
    List<CardKind> kinds = kinds();
    List<LoopTrace> all = new ArrayList<>(kinds.size());
    for (int i = 0; i < kinds.size(); i++) {
      double level = level(i, kinds.get(i).severity());
      if (level != loop.speaksAbove(i) && !applies[i].isFalse()) {
        trace(i, level); // Margins hang on the level.
      }
      all.add(new LoopTrace(kinds.get(i), traces.get(i), margin(i, level)));
    }
    return all;
  }

  private @Nullable Margin margin(int card, double level) {
    if (truths[card].truth() == Truth.UNKNOWN || applies[card].isFalse()) {
      return null;
    }
    List<Condition> conditions = new ArrayList<>(loop.order.get(card).scope());
    conditions.addAll(loop.order.get(card).when());
    return margins(level).ofAll(conditions, traces.get(card));
  }

  private double level(int card, Severity severity) {
    return severity == loop.order.get(card).card().severity()
        ? loop.speaksAbove(card)
        : loop.levels.of(severity);
  }

  private CardKind kind(int i, Map<String, Severity> changed) {
    Card card = loop.order.get(i).card();
    Severity severity = changed.getOrDefault(card.id().text(), card.severity());
    double level = level(i, severity);
    Kind kind;
    if (applies[i].isFalse()) {
      kind = Kind.NOT_APPLICABLE;
    } else if (truths[i].exceeds(level)) {
      kind = card.flags() ? Kind.FAIL : Kind.INFORMATIONAL;
    } else {
      kind = truths[i].mayExceed(level) ? Kind.OPEN : Kind.PASS;
    }
    boolean finding = card.flags() && (kind == Kind.FAIL || kind == Kind.OPEN);
    return new CardKind(card.id().text(), kind, truths[i], severity, finding);
  }

  /** The gravest override counts, without one the easing that leaves the finding gravest. */
  private Map<String, Severity> changed() {
    Map<String, Severity> changed = new HashMap<>();
    for (boolean override : new boolean[] {false, true}) {
      Map<String, Severity> by = new HashMap<>();
      for (int i = 0; i < truths.length; i++) {
        SeverityChange change = loop.order.get(i).card().change();
        if (change != null && change.overrides() == override && acts(i, change)) {
          by.merge(change.card().text(), change.to(), LoopEvaluation::graver);
        }
      }
      changed.putAll(by);
    }
    return changed;
  }

  private boolean acts(int card, SeverityChange change) {
    Integer other = loop.place(change.card().text());
    if (other == null) {
      return false;
    }
    boolean lowers = change.to().compareTo(loop.order.get(other).card().severity()) < 0;
    boolean holds =
        lowers
            ? truths[card].holdsBut(loop.speaksAbove(other))
            : truths[card].exceeds(loop.levels.of(change.to()));
    return holds && !truths[other].isFalse();
  }

  private static Severity graver(Severity a, Severity b) {
    return Comparator.<Severity>naturalOrder().compare(a, b) >= 0 ? a : b;
  }

  private List<CardKind> silenced(List<CardKind> kinds) {
    List<CardKind> all = new ArrayList<>(kinds.size());
    for (int i = 0; i < kinds.size(); i++) {
      CardKind one = kinds.get(i);
      all.add(one.isFinding() && isSilenced(i, kinds) ? one.silenced("") : one);
    }
    return all;
  }

  private boolean isSilenced(int card, List<CardKind> kinds) {
    for (Written id : loop.order.get(card).card().silencedBy()) {
      Integer place = loop.place(id.text());
      CardKind graver = place == null ? null : kinds.get(place);
      if (graver != null
          && graver.kind() == Kind.FAIL
          && graver.isFinding()
          && graver.severity().compareTo(kinds.get(card).severity()) > 0) {
        return true;
      }
    }
    return false;
  }
}
