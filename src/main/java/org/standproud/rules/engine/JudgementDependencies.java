package org.standproud.rules.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.card.Written;

/**
 * The facts behind each judgement, also through other judgements: what a card that reads a
 * judgement really depends on. Judgements are acyclic, so this ends.
 */
final class JudgementDependencies {

  private final Map<String, CompiledCard> deriving = new HashMap<>();
  private final Map<String, List<Fact>> facts = new HashMap<>();

  private JudgementDependencies(List<CompiledCard> cards) {
    for (CompiledCard card : cards) {
      Written judgement = card.card().derives();
      if (judgement != null) {
        deriving.put(judgement.text(), card);
      }
    }
    List.copyOf(deriving.keySet()).forEach(this::behind);
  }

  /** The facts behind each judgement of some cards, by its name. */
  static Map<String, List<Fact>> of(List<CompiledCard> cards) {
    return Map.copyOf(new JudgementDependencies(cards).facts);
  }

  private List<Fact> behind(String judgement) {
    List<Fact> known = facts.get(judgement);
    if (known != null) {
      return known;
    }
    CompiledCard card = deriving.get(judgement);
    Set<Fact> found = new LinkedHashSet<>();
    if (card != null) {
      found.addAll(card.facts());
      card.judgements().forEach(deeper -> found.addAll(behind(deeper)));
    }
    List<Fact> all = new ArrayList<>(found);
    facts.put(judgement, all);
    return all;
  }
}
