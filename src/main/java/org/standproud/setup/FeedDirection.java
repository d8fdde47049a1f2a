package org.standproud.setup;

/** Which way the cutter moves along the jaws relative to the stock. */
public enum FeedDirection implements Worded {
  /** Toward positive X. */
  PLUS_X("+x"),
  /** Toward negative X. */
  MINUS_X("-x");

  private final String words;

  FeedDirection(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
