package org.standproud.api.sarif;

/**
 * Escapes text for Markdown. A viewer may render the help of a card as Markdown, where a link or
 * HTML in a card's text would look like the service's own. By CommonMark 0.31, section 2.4, any
 * ASCII punctuation may be escaped by a backslash.
 */
final class PlainMarkdown {

  private static final String MARKS = "\\`*_{}[]()<>#+-!|~&$^=:@/";

  private PlainMarkdown() {}

  /** Returns the text on one line, with every special character escaped. */
  static String of(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.isISOControl(c)) {
        plain.append(' ');
        continue;
      }
      boolean numbered =
          (c == '.' || c == ')')
              && i > 0
              && text.substring(0, i).chars().allMatch(Character::isDigit);
      if (numbered || MARKS.indexOf(c) >= 0) {
        plain.append('\\');
      }
      plain.append(c);
    }
    return plain.toString().strip();
  }
}
