package org.standproud.setup;

/** The shape of packing between stock and jaw. */
public enum PackingKind implements Worded {
  /** Round soft wire or rod lying along the jaw: a line contact. */
  WIRE("wire"),
  /** A narrow flat strip along the jaw. */
  STRIP("strip"),
  /** Card or paper over the whole gripped face. */
  CARD("card"),
  /** Soft metal sheet over the whole gripped face. */
  SHEET("sheet");

  private final String words;

  PackingKind(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
