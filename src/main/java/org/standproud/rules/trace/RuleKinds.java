package org.standproud.rules.trace;

import java.util.List;

/**
 * The outcome of every card of one revision for one set-up, without reasons, in the order of their
 * ids.
 *
 * @param revision the revision of the rule base
 * @param cards every card
 */
public record RuleKinds(String revision, List<CardKind> cards) {

  /** Copies the list. */
  public RuleKinds {
    cards = List.copyOf(cards);
  }

  /** The cards that fire or are open. */
  public List<CardKind> findings() {
    return cards.stream().filter(CardKind::isFinding).toList();
  }
}
