package org.standproud.rules.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.SeverityChange;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.Changed;
import org.standproud.rules.trace.Kind;

/** Kind and severity of each card, from what the engine found. */
final class SeverityResolver {

  private final List<CompiledCard> cards;
  private final Map<String, List<Changed>> changes = new HashMap<>();

  SeverityResolver(List<CompiledCard> cards, Evaluation hearing) {
    this.cards = cards;
    if (hearing.nobodyActed()) {
      return;
    }
    for (int i = 0; i < cards.size(); i++) {
      SeverityChange change = cards.get(i).card().change();
      if (change != null && hearing.acted(i)) {
        changes
            .computeIfAbsent(change.card().text(), id -> new ArrayList<>())
            .add(new Changed(cards.get(i).id(), change.overrides(), change.to(), change.because()));
      }
    }
  }

  List<Changed> changed(int card) {
    return changes.isEmpty() ? List.of() : changes.getOrDefault(cards.get(card).id(), List.of());
  }

  /** The gravest override counts; without one, the easing that leaves the finding gravest. */
  Severity severity(int card) {
    List<Changed> changed = changed(card);
    Severity written = cards.get(card).card().severity();
    if (changed.isEmpty()) {
      return written;
    }
    boolean overridden = changed.stream().anyMatch(Changed::overrides);
    return changed.stream()
        .filter(c -> c.overrides() == overridden)
        .map(Changed::to)
        .max(Severity::compareTo)
        .orElse(written);
  }

  static Kind kind(Card card, Truth applies, Truth truth) {
    if (applies == Truth.FALSE) {
      return Kind.NOT_APPLICABLE;
    }
    return switch (truth) {
      case TRUE, EITHER -> card.flags() ? Kind.FAIL : Kind.INFORMATIONAL;
      case FALSE -> Kind.PASS;
      case UNKNOWN -> Kind.OPEN;
    };
  }
}
