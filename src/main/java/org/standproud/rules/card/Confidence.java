package org.standproud.rules.card;

import org.standproud.setup.Worded;

/** Confidence in the source of a card, best first. */
public enum Confidence implements Worded {
  /** A standard, or measured and published more than once. */
  HIGH("high"),
  /** A handbook or one good paper. */
  MEDIUM("medium"),
  /** Common practice. */
  LOW("low");

  private final String words;

  Confidence(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
