package org.standproud.rules.card;

import org.standproud.setup.Worded;

/**
 * What an example expects of its card; for a card that derives or eases, fail says that its
 * conditions hold.
 */
public enum Expectation implements Worded {
  /** The conditions hold or may hold. */
  FAIL("fail"),
  /** The conditions do not hold. */
  PASS("pass"),
  /** A fact is missing. */
  OPEN("open"),
  /** The card is not about this set-up. */
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
