package org.standproud.setup;

/** ISO 513 application group of the stock. */
public enum MaterialGroup implements Worded {
  /** Steel. */
  P("P"),
  /** Stainless steel. */
  M("M"),
  /** Cast iron. */
  K("K"),
  /** Non-ferrous. */
  N("N"),
  /** Heat-resistant alloys and titanium. */
  S("S"),
  /** Hardened. */
  H("H");

  private final String words;

  MaterialGroup(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
