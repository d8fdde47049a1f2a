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
 * One immutable revision of the cards, ready to judge set-ups. Safe for use from many threads: each
 * assessment has a session of its own.
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
   * @param cards compiled cards, as {@link CardCompiler} gave them
   * @param facts the vocabulary they were compiled against
   * @param levels from which share of the draws on they speak
   * @param by who publishes it
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

  /** From which share of the draws on its cards speak. */
  public Levels levels() {
    return levels;
  }

  /**
   * The share of the draws above which a card speaks.
   *
   * @param id the id of the card
   * @throws IllegalArgumentException if there is no such card
   */
  public double speaksAbove(String id) {
    return card(id).level(levels);
  }

  /** The hash of the content of some cards, whoever publishes them. */
  public static String contentHash(List<Card> cards, Levels levels) {
    return CanonicalContent.hash(cards, levels);
  }

  /**
   * What every card says of one set-up.
   *
   * @param evidence the values of the facts; what it does not hold is missing
   * @throws IllegalArgumentException if a value is not of the type of its fact
   */
  public RuleTrace evaluate(Evidence evidence) {
    TracingEvaluation hearing = heard(hearing(new Readings(facts, evidence)));
    SeverityResolver weighing = new SeverityResolver(cards, levels, hearing);
    List<CardTrace> traces = new ArrayList<>(cards.size());
    for (int i = 0; i < cards.size(); i++) {
      traces.add(hearing.trace(i, weighing));
    }
    return new RuleTrace(
        revision.id(),
        Silence.among(traces, CardTrace::silenced, this::silencers),
        hearing.judgements());
  }

  /**
   * What one card says of one set-up.
   *
   * @param evidence the values of the facts; what it does not hold is missing
   * @param id the id of the card
   * @throws IllegalArgumentException if there is no such card, or a value is not of the type of its
   *     fact
   */
  public CardTrace evaluate(Evidence evidence, String id) {
    TracingEvaluation hearing = heard(hearing(new Readings(facts, evidence)));
    return hearing.trace(cards.indexOf(card(id)), new SeverityResolver(cards, levels, hearing));
  }

  /**
   * What every card says of one set-up, without reasons and margins: many times cheaper than the
   * whole trace.
   *
   * @param evidence the values of the facts; what it does not hold is missing
   * @throws IllegalArgumentException if a value is not of the type of its fact
   */
  public RuleKinds kinds(Evidence evidence) {
    OutcomeEvaluation hearing = heard(new OutcomeEvaluation(cards, new Readings(facts, evidence)));
    SeverityResolver weighing = new SeverityResolver(cards, levels, hearing);
    List<CardKind> kinds = new ArrayList<>(cards.size());
    for (int i = 0; i < cards.size(); i++) {
      kinds.add(hearing.kind(i, weighing));
    }
    return new RuleKinds(revision.id(), Silence.among(kinds, CardKind::silenced, this::silencers));
  }

  private List<Written> silencers(CardOutcome outcome) {
    return card(outcome.id()).card().silencedBy();
  }

  /**
   * The card of that id.
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
   * The facts that the conditions of a card hang on, those behind its judgements too.
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

  /** A hearing of some readings, yet to be run. */
  TracingEvaluation hearing(Readings readings) {
    return new TracingEvaluation(cards, levels, behind, readings);
  }

  private <T extends Evaluation> T heard(T hearing) {
    network.run(List.of(hearing));
    return hearing;
  }

  /** The network, for tests of truth maintenance. */
  Network network() {
    return network;
  }
}
