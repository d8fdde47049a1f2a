package org.standproud.audit;

import org.jspecify.annotations.Nullable;

/** Limits of words that both databases can search: short, without control characters. */
final class Words {

  /** Longest word, in UTF-16 code units; the width of the columns. */
  static final int LONGEST = 200;

  private static final int LONGEST_TEXT = 2_000;

  private Words() {}

  static void required(String name, String word) {
    if (word.isBlank()) {
      throw new IllegalArgumentException(name + " is empty");
    }
    if (word.length() > LONGEST) {
      throw new IllegalArgumentException(name + " is longer than " + LONGEST + " characters");
    }
    if (word.chars().anyMatch(Character::isISOControl)) {
      throw new IllegalArgumentException(name + " holds a control character");
    }
  }

  /** A sentence or two: longer than a word, line ends allowed. */
  static void text(String name, String text) {
    if (text.isBlank() || text.length() > LONGEST_TEXT) {
      throw new IllegalArgumentException(
          name + " must be 1 to " + LONGEST_TEXT + " characters long");
    }
  }

  static void optional(String name, @Nullable String word) {
    if (word != null) {
      required(name, word);
    }
  }
}
