package org.standproud.rules.card;

import org.jspecify.annotations.Nullable;

/**
 * What is wrong with a card, where, and how to put it right.
 *
 * @param file the file
 * @param line line, from 1
 * @param column column, from 1
 * @param fragment the text that is wrong
 * @param message why it is refused
 * @param nearest the known name that was probably meant, or null
 * @param example something in its place that works, or null
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

  /** All of it on one line. */
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
