package org.standproud.setup;

/** The state of the cutting edges. */
public enum EdgeCondition implements Worded {
  /** New or newly ground. */
  FRESH("fresh"),
  /** Part worn, no visible flats. */
  USED("used"),
  /** Visible wear land. */
  WORN("worn"),
  /** One or more edges chipped. */
  CHIPPED("chipped");

  private final String words;

  EdgeCondition(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
