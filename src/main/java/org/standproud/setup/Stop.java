package org.standproud.setup;

/** Where a stop keeps the stock from moving along the jaws. */
public enum Stop implements Worded {
  /** No stop. */
  NONE("none"),
  /** A stop at the negative X end: it takes a push toward negative X. */
  MINUS_X("-x"),
  /** A stop at the positive X end: it takes a push toward positive X. */
  PLUS_X("+x"),
  /** A stop at each end. */
  BOTH("both ends");

  private final String words;

  Stop(String words) {
    this.words = words;
  }

  /** Whether it takes a push toward positive X. */
  public boolean takesPlusX() {
    return this == PLUS_X || this == BOTH;
  }

  /** Whether it takes a push toward negative X. */
  public boolean takesMinusX() {
    return this == MINUS_X || this == BOTH;
  }

  @Override
  public String words() {
    return words;
  }
}
