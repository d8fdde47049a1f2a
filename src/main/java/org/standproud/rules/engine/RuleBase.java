package org.standproud.rules.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Levels;
import org.standproud.rules.card.Written;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.Readings;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.CardOutcome;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.RuleKinds;
import org.standproud.rules.trace.RuleTrace;

/**
 * One immutable revision of the cards, ready to judge set-ups. Thread-safe: each evaluation has its
 * own session.
 */
public final class RuleBase {

  private final Revision revision;
  private final FactTable facts;
  private final List<CompiledCard> cards;
  private final Map<String, CompiledCard> byId = new HashMap<>();
  private final Levels levels;
  private final Network network;
  private final Map<String, List<Fact>> behind;

  /**
   * Builds the network.
   *
   * @param cards compiled cards from {@link CardCompiler}
   * @param facts the vocabulary they were compiled with
   * @param levels the levels at which they fire
   * @param by its authorship
   */
  public RuleBase(List<CompiledCard> cards, FactTable facts, Levels levels, Authorship by) {
    this.cards = List.copyOf(cards);
    this.facts = facts;
    this.cards.forEach(c -> byId.put(c.id(), c));
    this.levels = levels;
    this.revision =
        CanonicalContent.revision(cards.stream().map(CompiledCard::card).toList(), levels, by);
    this.network = new Network(this.cards, levels);
    this.behind = JudgementDependencies.of(this.cards);
  }

  /** Its identity. */
  public Revision revision() {
    return revision;
  }

  /** Its cards in the order of their ids. */
  public List<CompiledCard> cards() {
    return cards;
  }

  /** Its vocabulary. */
  public FactTable facts() {
    return facts;
  }

  /** The levels at which its cards fire. */
  public Levels levels() {
    return levels;
  }

  /**
   * The share of the draws above which a card fires.
   *
   * @param id the id of the card
   * @throws IllegalArgumentException if there is no such card
   */
  public double speaksAbove(String id) {
    return card(id).level(levels);
  }

  /** The hash of the content of some cards, independent of the publisher. */
  public static String contentHash(List<Card> cards, Levels levels) {
    return CanonicalContent.hash(cards, levels);
  }

  /**
   * The outcome of every card for one set-up.
   *
   * @param evidence the values of the facts; facts it does not contain are missing
   * @throws IllegalArgumentException if a value is not of the type of its fact
   */
  public RuleTrace evaluate(Evidence evidence) {
    TracingEvaluation evaluation = run(evaluation(new Readings(facts, evidence)));
    SeverityResolver weighing = new SeverityResolver(cards, levels, evaluation);
    List<CardTrace> traces = new ArrayList<>(cards.size());
    for (int i = 0; i < cards.size(); i++) {
      traces.add(evaluation.trace(i, weighing));
    }
    return new RuleTrace(
        revision.id(),
        Silence.among(traces, CardTrace::silenced, this::silencers),
        evaluation.judgements());
  }

  /**
   * The outcome of one card for one set-up.
   *
   * @param evidence the values of the facts; facts it does not contain are missing
   * @param id the id of the card
   * @throws IllegalArgumentException if there is no such card, or a value is not of the type of its
   *     fact
   */
  public CardTrace evaluate(Evidence evidence, String id) {
    TracingEvaluation evaluation = run(evaluation(new Readings(facts, evidence)));
    return evaluation.trace(
        cards.indexOf(card(id)), new SeverityResolver(cards, levels, evaluation));
  }

  /**
   * The outcome of every card for one set-up, without reasons and margins: many times cheaper than
   * the full trace.
   *
   * @param evidence the values of the facts; facts it does not contain are missing
   * @throws IllegalArgumentException if a value is not of the type of its fact
   */
  public RuleKinds kinds(Evidence evidence) {
    OutcomeEvaluation evaluation = run(new OutcomeEvaluation(cards, new Readings(facts, evidence)));
    SeverityResolver weighing = new SeverityResolver(cards, levels, evaluation);
    List<CardKind> kinds = new ArrayList<>(cards.size());
    for (int i = 0; i < cards.size(); i++) {
      kinds.add(evaluation.kind(i, weighing));
    }
    return new RuleKinds(revision.id(), Silence.among(kinds, CardKind::silenced, this::silencers));
  }

  private List<Written> silencers(CardOutcome outcome) {
    return card(outcome.id()).card().silencedBy();
  }

  /**
   * The card with this id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public CompiledCard card(String id) {
    CompiledCard card = byId.get(id);
    if (card == null) {
      throw new IllegalArgumentException("no card " + id);
    }
    return card;
  }

  /**
   * The facts that a card depends on, including those behind its judgements.
   *
   * @param id the id of the card
   * @throws IllegalArgumentException if there is no such card
   */
  public List<Fact> reads(String id) {
    return card(id).preparedWhen().stream()
        .flatMap(condition -> condition.reads(behind).stream())
        .distinct()
        .toList();
  }

  /** An evaluation of some readings, not run yet. */
  TracingEvaluation evaluation(Readings readings) {
    return new TracingEvaluation(cards, levels, behind, readings);
  }

  private <T extends Evaluation> T run(T evaluation) {
    network.run(List.of(evaluation));
    return evaluation;
  }

  /** The network, for tests of truth maintenance. */
  Network network() {
    return network;
  }
}
