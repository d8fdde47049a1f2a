package org.standproud.rules.card;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A template for new cards: it passes the gate, and every line is meant to be changed. */
public final class NewCard {

  private static final String PLACE = "NEW-ID";

  private NewCard() {}

  /**
   * Its text.
   *
   * @param id id of the card
   */
  public static String text(String id) {
    try (var stream = NewCard.class.getResourceAsStream("new-card.yaml")) {
      if (stream == null) {
        throw new IllegalStateException("new-card.yaml is not on the class path");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8).replace(PLACE, id);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
