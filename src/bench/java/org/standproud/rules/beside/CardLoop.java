package org.standproud.rules.beside;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.card.Levels;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.trace.CardKind;

/**
 * Some cards judged one after the other in a plain loop, without a rule engine. It evaluates the
 * same compiled conditions as the engine: judging every draw of the joint sample in Java written
 * for each card would measure other arithmetic. What the engine takes longer is the cost of its
 * sessions, agenda and truth maintenance. Cards that derive judgements come before those that read
 * them.
 */
final class CardLoop {

  final List<CompiledCard> order;
  final Levels levels;
  private final FactTable facts;
  private final List<Condition> scopes = new ArrayList<>();
  private final List<Condition> whens = new ArrayList<>();
  private final double[] speaksAbove;
  private final Map<String, Integer> places = new HashMap<>();

  CardLoop(RuleBase base) {
    facts = base.facts();
    levels = base.levels();
    order = inOrder(base.cards());
    speaksAbove = new double[order.size()];
    for (int i = 0; i < order.size(); i++) {
      CompiledCard card = order.get(i);
      scopes.add(Condition.all(card.scope()));
      whens.add(Condition.all(card.when()));
      speaksAbove[i] = base.speaksAbove(card.id());
      places.put(card.id(), i);
    }
  }

  private static List<CompiledCard> inOrder(List<CompiledCard> cards) {
    Map<String, CompiledCard> deriving = new HashMap<>();
    for (CompiledCard card : cards) {
      if (card.card().derives() != null) {
        deriving.put(card.card().derives().text(), card);
      }
    }
    Map<String, CompiledCard> ordered = new LinkedHashMap<>();
    cards.forEach(card -> add(card, deriving, ordered));
    return List.copyOf(ordered.values());
  }

  private static void add(
      CompiledCard card, Map<String, CompiledCard> deriving, Map<String, CompiledCard> ordered) {
    card.judgements().forEach(j -> add(deriving.get(j), deriving, ordered));
    ordered.putIfAbsent(card.id(), card);
  }

  int size() {
    return order.size();
  }

  Condition scope(int card) {
    return scopes.get(card);
  }

  Condition when(int card) {
    return whens.get(card);
  }

  /** The share of the draws above which a card speaks at the severity as written. */
  double speaksAbove(int card) {
    return speaksAbove[card];
  }

  /** The place of a card, or null if it is not among them. */
  @Nullable Integer place(String id) {
    return places.get(id);
  }

  /** One set-up, not judged yet. */
  LoopEvaluation evaluation(Evidence evidence, boolean traced) {
    return new LoopEvaluation(this, facts, evidence, traced);
  }

  private LoopEvaluation judged(Evidence evidence, boolean traced) {
    LoopEvaluation evaluation = evaluation(evidence, traced);
    for (int i = 0; i < order.size(); i++) {
      evaluation.judge(i);
    }
    return evaluation;
  }

  /** Kinds of all cards in their order. */
  List<CardKind> kinds(Evidence evidence) {
    return judged(evidence, false).kinds();
  }

  /** Traces of all cards in their order. */
  List<LoopTrace> traced(Evidence evidence) {
    return judged(evidence, true).traces();
  }
}
