package org.standproud.rules.trace;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standproud.rules.language.DrawTruth;

/**
 * The outcome of every card of one revision for one set-up, in the order of their ids.
 *
 * @param revision the revision of the rule base
 * @param cards every card
 * @param judgements every judgement with the draws in which it holds
 */
public record RuleTrace(String revision, List<CardTrace> cards, Map<String, DrawTruth> judgements) {

  /** Copies the collections. */
  public RuleTrace {
    cards = List.copyOf(cards);
    judgements = Collections.unmodifiableMap(new TreeMap<>(judgements));
  }

  /** The cards that fire or are open. */
  public List<CardTrace> findings() {
    return cards.stream().filter(CardTrace::isFinding).toList();
  }

  /**
   * The outcome of one card.
   *
   * @param id its id
   * @throws IllegalArgumentException if there is no such card
   */
  public CardTrace card(String id) {
    return cards.stream()
        .filter(c -> c.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no card " + id));
  }
}
