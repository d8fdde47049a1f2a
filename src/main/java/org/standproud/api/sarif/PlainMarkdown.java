package org.standproud.api.sarif;

/**
 * Text that means nothing in Markdown. A viewer may show the help of a card as Markdown, and a link
 * or HTML in the words of a card would be shown as the service's own. By CommonMark 0.31, section
 * 2.4, any ASCII punctuation may be escaped by a backslash.
 */
final class PlainMarkdown {

  private static final String MARKS = "\\`*_{}[]()<>#+-!|~&$^=:@/";

  private PlainMarkdown() {}

  /** A text on one line, with every character that could mean something escaped. */
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
