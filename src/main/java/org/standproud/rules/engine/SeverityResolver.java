package org.standproud.rules.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Levels;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.SeverityChange;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.trace.Changed;
import org.standproud.rules.trace.Kind;

/** Determines kind and severity of each card from the results of the engine. */
final class SeverityResolver {

  private final List<CompiledCard> cards;
  private final Levels levels;
  private final Map<String, List<Changed>> changes = new HashMap<>();

  SeverityResolver(List<CompiledCard> cards, Levels levels, Evaluation evaluation) {
    this.cards = cards;
    this.levels = levels;
    if (evaluation.noneActed()) {
      return;
    }
    for (int i = 0; i < cards.size(); i++) {
      SeverityChange change = cards.get(i).card().change();
      if (change != null && evaluation.acted(i)) {
        changes
            .computeIfAbsent(change.card().text(), id -> new ArrayList<>())
            .add(new Changed(cards.get(i).id(), change.overrides(), change.to(), change.because()));
      }
    }
  }

  List<Changed> changed(int card) {
    return changes.isEmpty() ? List.of() : changes.getOrDefault(cards.get(card).id(), List.of());
  }

  /** The most severe override wins; without one, the easing that leaves the finding most severe. */
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

  /**
   * The share of the draws above which a card fires. The card's own level applies to its written
   * severity; once that is changed, the level of the new severity applies.
   */
  double level(int card) {
    Severity severity = severity(card);
    return severity == cards.get(card).card().severity()
        ? cards.get(card).level(levels)
        : levels.of(severity);
  }

  static Kind kind(Card card, DrawTruth applies, DrawTruth truth, double level) {
    if (applies.isFalse()) {
      return Kind.NOT_APPLICABLE;
    }
    if (truth.exceeds(level)) {
      return card.flags() ? Kind.FAIL : Kind.INFORMATIONAL;
    }
    return truth.mayExceed(level) ? Kind.OPEN : Kind.PASS;
  }
}
