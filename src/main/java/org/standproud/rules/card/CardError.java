package org.standproud.rules.card;

import org.jspecify.annotations.Nullable;

/**
 * An error in a card, its position, and a correction.
 *
 * @param file the file
 * @param line line, from 1
 * @param column column, from 1
 * @param fragment the wrong text
 * @param message why it is refused
 * @param nearest the known name probably meant, or null
 * @param example an example that works, or null
 */
public record CardError(
    String file,
    int line,
    int column,
    String fragment,
    String message,
    @Nullable String nearest,
    @Nullable String example) {

  /** An error at a text of the card. */
  public static CardError at(String file, Written where, String message) {
    return new CardError(file, where.line(), where.column(), where.text(), message, null, null);
  }

  /** The error on one line. */
  @Override
  public String toString() {
    return file
        + ":"
        + line
        + ":"
        + column
        + ": "
        + (fragment.isEmpty() ? "" : "\"" + fragment + "\": ")
        + message
        + (nearest == null ? "" : "; did you mean \"" + nearest + "\"?")
        + (example == null || example.isEmpty() ? "" : "; for example: " + example);
  }
}
