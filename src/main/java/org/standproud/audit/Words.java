package org.standproud.audit;

import org.jspecify.annotations.Nullable;

/** What a word must be to be searched for in both databases: short, and without control signs. */
final class Words {

  /** Longest word, in UTF-16 code units; the width of the columns. */
  static final int LONGEST = 200;

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

  static void optional(String name, @Nullable String word) {
    if (word != null) {
      required(name, word);
    }
  }
}
