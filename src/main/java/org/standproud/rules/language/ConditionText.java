package org.standproud.rules.language;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The first check of a condition, before any parser: length, characters, depth of brackets. What
 * passes can be parsed in bounded time.
 */
public final class ConditionText {

  /** Longest condition, in characters. */
  public static final int MAX_LENGTH = 400;

  /** Deepest nesting of brackets. */
  public static final int MAX_NESTING = 8;

  /** Longest number, in characters. */
  public static final int MAX_NUMBER_LENGTH = 24;

  /** The error for text that other languages use and this one does not; longest first. */
  private static final Map<String, String> FOREIGN =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("&", "write and"),
              Map.entry("|", "write or"),
              Map.entry("==", "write = once"),
              Map.entry("<>", "write !="),
              Map.entry("**", "powers are not part of the language"),
              Map.entry("^", "powers are not part of the language"),
              Map.entry("//", "comments belong on a line of their own, after #"),
              Map.entry("/*", "comments belong on a line of their own, after #"),
              Map.entry("'", "words stand in double quotes"),
              Map.entry("%", "a percentage belongs under limits, with a name"),
              Map.entry("@", "dates and times are not part of the language"),
              Map.entry("{", "contexts are not part of the language"),
              Map.entry("}", "contexts are not part of the language"),
              Map.entry(":", "named parameters are not part of the language"),
              Map.entry(";", "one condition a line"),
              Map.entry("?", "the name of the fact has to be written"),
              Map.entry("\\", "escapes are not part of the language")));

  private ConditionText() {}

  /** The first error in the text, or null. */
  static @Nullable Flaw flaw(String text) {
    if (text.isBlank()) {
      return new Flaw(0, "", "the condition is empty");
    }
    if (text.length() > MAX_LENGTH) {
      return new Flaw(MAX_LENGTH, "", "the condition is longer than " + MAX_LENGTH + " characters");
    }
    return new Scan(text).firstFlaw();
  }

  /**
   * An error in the text.
   *
   * @param at index of the character
   * @param fragment the characters
   * @param reason why they are refused
   */
  record Flaw(int at, String fragment, String reason) {}

  private static final class Scan {
    private final String text;
    private boolean quoted;
    private int depth;
    private int digits;

    Scan(String text) {
      this.text = text;
    }

    @Nullable Flaw firstFlaw() {
      for (int i = 0; i < text.length(); i++) {
        Flaw flaw = step(i, text.charAt(i));
        if (flaw != null) {
          return flaw;
        }
      }
      return quoted ? new Flaw(text.length(), "\"", "a quoted word is not closed") : null;
    }

    private @Nullable Flaw step(int i, char c) {
      if (c == '"') {
        quoted = !quoted;
        return null;
      }
      if (c != '\n' && (Character.isISOControl(c) || c > 0x7e && !Character.isLetter(c))) {
        return new Flaw(i, Integer.toHexString(c), "this character is not part of the language");
      }
      if (quoted) {
        return c == '\\' ? new Flaw(i, "\\", "escapes are not part of the language") : null;
      }
      return outsideQuotes(i, c);
    }

    /** Chains of dotted names take the parser very long too, so they never reach it. */
    private boolean rangeOrDecimal(int i) {
      char before = i == 0 ? ' ' : text.charAt(i - 1);
      char after = i + 1 == text.length() ? ' ' : text.charAt(i + 1);
      return before == '.'
          || after == '.'
          || Character.isDigit(after) && !Character.isLetter(before);
    }

    private @Nullable Flaw outsideQuotes(int i, char c) {
      for (Map.Entry<String, String> foreign : FOREIGN.entrySet()) {
        if (text.startsWith(foreign.getKey(), i)) {
          return new Flaw(i, foreign.getKey(), foreign.getValue());
        }
      }
      if (c == '!' && !text.startsWith("!=", i)) {
        return new Flaw(i, "!", "write not( )");
      }
      if (c == '.' && !rangeOrDecimal(i)) {
        return new Flaw(i, ".", "a value has no parts that could be reached by a dot");
      }
      depth += c == '(' || c == '[' ? 1 : c == ')' || c == ']' ? -1 : 0;
      if (depth > MAX_NESTING) {
        return new Flaw(i, "" + c, "brackets are nested deeper than " + MAX_NESTING);
      }
      digits = Character.isDigit(c) || c == '.' ? digits + 1 : 0;
      return digits > MAX_NUMBER_LENGTH
          ? new Flaw(i, "" + c, "a number is longer than " + MAX_NUMBER_LENGTH + " characters")
          : null;
    }
  }
}
