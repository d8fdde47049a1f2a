package org.standproud.setup;

/** The condition of the stock faces that the jaws bear on. */
public enum StockSurface implements Worded {
  /** Milled, ground or bright drawn: flat. */
  MACHINED("machined"),
  /** Hot or cold rolled skin. */
  ROLLED("rolled"),
  /** Left by a saw. */
  SAWN("sawn"),
  /** Casting or flame-cut skin. */
  CAST("cast");

  private final String words;

  StockSurface(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
