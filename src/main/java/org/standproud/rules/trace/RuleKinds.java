package org.standproud.rules.trace;

import java.util.List;

/**
 * What every card of one revision said of one set-up, without the reasons, in the order of their
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

  /** The cards that flag, or could not be judged. */
  public List<CardKind> findings() {
    return cards.stream().filter(CardKind::isFinding).toList();
  }
}
