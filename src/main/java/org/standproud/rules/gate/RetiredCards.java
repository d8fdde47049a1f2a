package org.standproud.rules.gate;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardError;

/** The ids of retired cards. They are never reused, so that an old record keeps its meaning. */
public final class RetiredCards {

  private static final String RESOURCE = "/retired-cards.csv";

  private final Map<String, String> replacedBy = new LinkedHashMap<>();

  private RetiredCards() {}

  /** No retired cards. */
  public static RetiredCards none() {
    return new RetiredCards();
  }

  /**
   * The list of the program: id, replacement, and reason.
   *
   * @throws IllegalStateException if a line has not these three parts
   */
  public static RetiredCards listed() {
    try (InputStream list = RetiredCards.class.getResourceAsStream(RESOURCE)) {
      if (list == null) {
        throw new IllegalStateException(RESOURCE + " is missing");
      }
      return read(new String(list.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static RetiredCards read(String csv) {
    RetiredCards retired = new RetiredCards();
    csv.lines()
        .skip(1)
        .forEach(
            line -> {
              String[] parts = line.split(",", 3);
              if (parts.length != 3 || retired.replacedBy.put(parts[0], parts[1]) != null) {
                throw new IllegalStateException(RESOURCE + ": " + line);
              }
            });
    return retired;
  }

  /** The replacement of each retired card, by its id: another id, or words. */
  public Map<String, String> replacedBy() {
    return Map.copyOf(replacedBy);
  }

  /** The error in the id of a card, or null. */
  @Nullable CardError reused(Card card) {
    String by = replacedBy.get(card.id().text());
    return by == null
        ? null
        : CardError.at(
            card.file(),
            card.id(),
            "this id belonged to a retired card, replaced by " + by + "; take a new id");
  }
}
