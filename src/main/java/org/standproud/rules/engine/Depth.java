package org.standproud.rules.engine;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Distance of a card from the facts: 0 if it reads no judgement, otherwise one more than the
 * deepest card that derives one it reads. Judgements are acyclic, so this ends.
 */
final class Depth {

  private final Map<String, CompiledCard> deriving = new HashMap<>();
  private final Map<String, Integer> depths = new HashMap<>();

  Depth(List<CompiledCard> cards) {
    for (CompiledCard card : cards) {
      if (card.card().derives() != null) {
        deriving.put(card.card().derives().text(), card);
      }
    }
  }

  int of(CompiledCard card) {
    Integer known = depths.get(card.id());
    if (known != null) {
      return known;
    }
    int depth = 0;
    for (String judgement : card.judgements()) {
      CompiledCard behind = deriving.get(judgement);
      depth = Math.max(depth, 1 + (behind == null ? 0 : of(behind)));
    }
    depths.put(card.id(), depth);
    return depth;
  }
}
