package org.standproud.rules.card;

import org.standproud.setup.Worded;

/**
 * The result an example expects; for a card that derives or eases, fail means that its conditions
 * hold.
 */
public enum Expectation implements Worded {
  /** The conditions hold or may hold. */
  FAIL("fail"),
  /** The conditions do not hold. */
  PASS("pass"),
  /** A fact is missing. */
  OPEN("open"),
  /** The card does not apply to this set-up. */
  NOT_APPLICABLE("notApplicable");

  private final String words;

  Expectation(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
