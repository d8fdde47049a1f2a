package org.standproud.rules.card;

import org.standproud.setup.Worded;

/** Severity of a finding, least first. */
public enum Severity implements Worded {
  /** Worth knowing (SARIF level note). */
  NOTE("note"),
  /** Run with care (SARIF level warning). */
  CAUTION("caution"),
  /** Do not run (SARIF level error). */
  STOP("stop");

  private final String words;

  Severity(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
