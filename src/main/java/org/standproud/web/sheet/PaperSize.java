package org.standproud.web.sheet;

import org.standproud.setup.Worded;

/** The paper size of a sheet. */
enum PaperSize implements Worded {
  /** ISO 216 A4. */
  A4("a4", "210mm 297mm"),
  /** ANSI/ASME Y14.1 size A, letter. */
  LETTER("letter", "8.5in 11in");

  private final String words;
  private final String css;

  PaperSize(String words, String css) {
    this.words = words;
    this.css = css;
  }

  @Override
  public String words() {
    return words;
  }

  /** Width and height for a style sheet. */
  String css() {
    return css;
  }
}
