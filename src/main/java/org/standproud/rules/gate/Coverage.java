package org.standproud.rules.gate;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.Written;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.Margin;

/**
 * The truth values that the examples of a card show for each of its conditions. Every condition
 * must be shown to hold, not to hold and, if a missing fact can leave it open, open. An example
 * that the card does not apply to shows nothing. For a card that compares numbers, one example must
 * be near a limit, where it is most likely to be wrong.
 */
public final class Coverage {

  /** What to do about a condition without full coverage. */
  public enum Demand {
    /** Report it. */
    REPORT,
    /** Refuse the cards. */
    REFUSE
  }

  /** A number is near its limit within this fraction of the larger, or if its band spans it. */
  static final double NEAR = 0.25;

  private record Place(CompiledCard card, Written text, Condition condition) {}

  private final Readings nothingKnown;
  private final Map<Place, Set<Truth>> seen = new LinkedHashMap<>();

  /** For each card that compares numbers, whether some example is near a limit. */
  private final Map<CompiledCard, Boolean> near = new LinkedHashMap<>();

  /**
   * Creates an empty coverage.
   *
   * @param nothingKnown readings with every fact missing
   */
  Coverage(Readings nothingKnown) {
    this.nothingKnown = nothingKnown;
  }

  /** Adds a card before any of its examples run. */
  void expect(CompiledCard card) {
    for (int i = 0; i < card.when().size(); i++) {
      seen.put(place(card, i), EnumSet.noneOf(Truth.class));
    }
  }

  /** Adds the result of one example. */
  void add(CompiledCard card, CardTrace trace) {
    if (trace.kind() == Kind.NOT_APPLICABLE) {
      return;
    }
    for (int i = 0; i < trace.conditions().size(); i++) {
      ConditionTrace condition = trace.conditions().get(i);
      Set<Truth> truths = seen.get(place(card, i));
      if (truths != null) {
        truths.add(condition.truth());
      }
      Margin margin = condition.margin();
      if (margin != null) {
        boolean close = condition.truth() == Truth.EITHER || margin.relative() <= NEAR;
        near.merge(card, close, Boolean::logicalOr);
      }
    }
  }

  private static Place place(CompiledCard card, int i) {
    return new Place(card, card.card().when().get(i), card.when().get(i));
  }

  /** Conditions without full coverage; empty for full coverage. */
  public List<CardError> gaps() {
    List<CardError> gaps = new ArrayList<>();
    seen.forEach(
        (place, truths) -> {
          String file = place.card.card().file();
          if (!truths.contains(Truth.TRUE)) {
            gaps.add(CardError.at(file, place.text, "no example shows this condition to hold"));
          }
          if (!truths.contains(Truth.FALSE)) {
            gaps.add(CardError.at(file, place.text, "no example shows this condition not to hold"));
          }
          if (!truths.contains(Truth.UNKNOWN) && canBeOpen(place)) {
            String message = "no example shows this condition open, with a fact unknown";
            gaps.add(CardError.at(file, place.text, message));
          }
        });
    near.forEach((card, shown) -> gapNear(card, shown, gaps));
    return gaps;
  }

  private static void gapNear(CompiledCard card, boolean shown, List<CardError> gaps) {
    if (!shown) {
      Written last = card.card().examples().get(card.card().examples().size() - 1).says();
      String message = "no example is near a limit: within a quarter of it, or in a band across it";
      gaps.add(CardError.at(card.card().file(), last, message));
    }
  }

  private boolean canBeOpen(Place place) {
    return place.condition.evaluate(nothingKnown, Judgements.NONE).truth() == Truth.UNKNOWN;
  }

  /** Number of conditions. */
  public int conditions() {
    return seen.size();
  }

  /** Number of conditions that some example shows open. */
  public int conditionsSeenUnknown() {
    return (int) seen.values().stream().filter(s -> s.contains(Truth.UNKNOWN)).count();
  }
}
