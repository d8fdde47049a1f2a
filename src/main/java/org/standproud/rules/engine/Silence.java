package org.standproud.rules.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.standproud.rules.card.Written;
import org.standproud.rules.trace.CardOutcome;
import org.standproud.rules.trace.Kind;

/**
 * Suppresses a finding if a more severe one means the same: the card names the cards that silence
 * it, and one of them fails with a higher severity.
 */
final class Silence {

  private Silence() {}

  /**
   * The outcomes, some of them silenced.
   *
   * @param outcomes the outcome of every card
   * @param silenced returns an outcome silenced by a card
   * @param by the ids of the cards that may silence one
   */
  static <T extends CardOutcome> List<T> among(
      List<T> outcomes,
      BiFunction<T, String, T> silenced,
      Function<CardOutcome, List<Written>> by) {
    Map<String, T> failing = new HashMap<>();
    for (T one : outcomes) {
      if (one.isFinding() && one.kind() == Kind.FAIL) {
        failing.put(one.id(), one);
      }
    }
    if (failing.isEmpty()) {
      return outcomes;
    }
    List<T> all = new ArrayList<>(outcomes.size());
    for (T one : outcomes) {
      T outcome = one;
      if (one.isFinding()) {
        for (Written id : by.apply(one)) {
          T graver = failing.get(id.text());
          if (graver != null && graver.severity().compareTo(one.severity()) > 0) {
            outcome = silenced.apply(one, id.text());
            break;
          }
        }
      }
      all.add(outcome);
    }
    return all;
  }
}
