package org.standproud.rules.card;

import org.jspecify.annotations.Nullable;

/**
 * An error in a card.
 *
 * @param file the file
 * @param line the line, from 1
 * @param column the column, from 1
 * @param fragment the wrong text
 * @param message what is wrong with it
 * @param nearest the known name or unit probably meant
 * @param example an example that works
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
