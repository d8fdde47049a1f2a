package org.standproud.drawing;

/** The characters that XML 1.0 (section 2.2, Char) can hold. */
public final class XmlText {

  /** Replaces a character that cannot be written. */
  static final int REPLACEMENT = 0xFFFD;

  private XmlText() {}

  /** Whether XML 1.0 can hold a code point. */
  static boolean allows(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || (c >= 0x10000 && c <= 0x10FFFF);
  }

  /**
   * A text with U+FFFD in place of everything that XML 1.0 cannot hold.
   *
   * @param text any text
   */
  public static String holding(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> out.appendCodePoint(allows(c) ? c : REPLACEMENT));
    return out.toString();
  }
}
