package org.standproud.audit.records;

import org.jspecify.annotations.Nullable;

/** Keeps a spreadsheet from running what somebody wrote into a field. */
public final class InertCell {

  /** What a spreadsheet takes for the beginning of a formula; common practice, no source. */
  private static final String STARTS_A_FORMULA = "=+-@\t\r\n";

  private InertCell() {}

  /**
   * A word as a cell that is only read.
   *
   * @param word any text that came from a caller
   * @return the word, after an apostrophe if a spreadsheet would run it
   */
  public static @Nullable String of(@Nullable String word) {
    boolean runs = word != null && !word.isEmpty() && STARTS_A_FORMULA.indexOf(word.charAt(0)) >= 0;
    return runs ? "'" + word : word;
  }
}
