package org.standproud.rules.gate;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.Written;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;

/** Which truths each condition was seen to take in the examples of its own card. */
public final class Coverage {

  /** What to do about a condition that no example shows both ways. */
  public enum Demand {
    /** Say so. */
    REPORT,
    /** Refuse the cards. */
    REFUSE
  }

  private record Place(Card card, Written condition) {}

  private final Map<Place, Set<Truth>> seen = new LinkedHashMap<>();

  Coverage() {}

  void add(CardTrace trace) {
    trace
        .conditions()
        .forEach(
            c ->
                seen.computeIfAbsent(
                        new Place(trace.card(), c.text()), p -> EnumSet.noneOf(Truth.class))
                    .add(c.truth()));
  }

  /**
   * Conditions that no example shows to hold, or none shows not to hold; none for full coverage.
   */
  public List<CardError> gaps() {
    return seen.entrySet().stream()
        .filter(e -> !e.getValue().contains(Truth.TRUE) || !e.getValue().contains(Truth.FALSE))
        .map(
            e ->
                CardError.at(
                    e.getKey().card().file(),
                    e.getKey().condition(),
                    e.getValue().contains(Truth.TRUE)
                        ? "no example shows this condition not to hold"
                        : "no example shows this condition to hold"))
        .toList();
  }

  /** How many conditions some example reached. */
  public int conditions() {
    return seen.size();
  }

  /** How many conditions some example shows to be unknown. */
  public int conditionsSeenUnknown() {
    return (int) seen.values().stream().filter(s -> s.contains(Truth.UNKNOWN)).count();
  }
}
