package org.standproud.rules.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The parsed files of a rule base: the cards and the levels at which they fire.
 *
 * @param cards those that can be parsed
 * @param levels the levels; {@link Levels#ANY_DRAW} if the file is missing or invalid
 * @param errors the errors
 */
public record CardFiles(List<Card> cards, Levels levels, List<CardError> errors) {

  /** Copies the lists. */
  public CardFiles {
    cards = List.copyOf(cards);
    errors = List.copyOf(errors);
  }

  /**
   * Parses files.
   *
   * @param files the text of each by its path
   * @param misnamed checks the path of a card; null if it is valid
   */
  public static CardFiles read(
      Map<String, String> files, Function<String, @Nullable CardError> misnamed) {
    List<Card> cards = new ArrayList<>();
    List<CardError> errors = new ArrayList<>();
    Levels levels = Levels.ANY_DRAW;
    for (Map.Entry<String, String> file : new TreeMap<>(files).entrySet()) {
      if (file.getKey().equals(Levels.FILE)) {
        LevelsReader.Outcome outcome = LevelsReader.read(file.getKey(), file.getValue());
        errors.addAll(outcome.errors());
        levels = outcome.levels() == null ? levels : outcome.levels();
        continue;
      }
      CardError wrong = misnamed.apply(file.getKey());
      if (wrong != null) {
        errors.add(wrong);
        continue;
      }
      CardReader.Outcome outcome = CardReader.read(file.getKey(), file.getValue());
      errors.addAll(outcome.errors());
      if (outcome.card() != null) {
        cards.add(outcome.card());
      }
    }
    return new CardFiles(cards, levels, errors);
  }
}
