package org.standproud.rules.engine;

import java.util.List;
import java.util.TreeMap;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.card.Card;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.RuleTrace;

/**
 * One immutable revision of the cards, ready to judge set-ups. Safe for use from many threads: each
 * assessment has a session of its own.
 */
public final class RuleBase {

  private final Revision revision;
  private final FactTable facts;
  private final List<CompiledCard> cards;
  private final Network network;

  /**
   * Builds the network.
   *
   * @param cards compiled cards, as {@link CardCompiler} gave them
   * @param facts the vocabulary they were compiled against
   * @param by who publishes it
   */
  public RuleBase(List<CompiledCard> cards, FactTable facts, Authorship by) {
    this.cards = List.copyOf(cards);
    this.facts = facts;
    this.revision = CanonicalContent.revision(cards.stream().map(CompiledCard::card).toList(), by);
    this.network = new Network(this.cards);
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

  /** The hash of the content of some cards, whoever publishes them. */
  public static String contentHash(List<Card> cards) {
    return CanonicalContent.hash(cards);
  }

  /**
   * What every card says of one set-up.
   *
   * @param evidence the values of the facts; what it does not hold is missing
   * @throws IllegalArgumentException if a value is not of the type of its fact
   */
  public RuleTrace evaluate(Evidence evidence) {
    Readings readings = new Readings(facts, evidence);
    Network.Outcome outcome = network.run(readings);
    Judgements judgements = name -> outcome.judgements().getOrDefault(name, Truth.UNKNOWN);
    TraceWriter writer = new TraceWriter(cards, outcome, readings, judgements);
    return new RuleTrace(
        revision.id(),
        cards.stream().map(writer::trace).toList(),
        new TreeMap<>(outcome.judgements()));
  }

  /** The network, for tests of truth maintenance. */
  Network network() {
    return network;
  }
}
