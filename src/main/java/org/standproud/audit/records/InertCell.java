package org.standproud.audit.records;

import org.jspecify.annotations.Nullable;

/** Keeps a spreadsheet from executing text in a cell. */
public final class InertCell {

  /** Characters that begin a formula in spreadsheets; common practice, no source. */
  private static final String STARTS_A_FORMULA = "=+-@\t\r\n";

  private InertCell() {}

  /**
   * A word as a cell that is not executed.
   *
   * @param word any text from a caller
   * @return the word, prefixed with an apostrophe if a spreadsheet would execute it
   */
  public static @Nullable String of(@Nullable String word) {
    boolean runs = word != null && !word.isEmpty() && STARTS_A_FORMULA.indexOf(word.charAt(0)) >= 0;
    return runs ? "'" + word : word;
  }
}
