package org.standproud.setup;

/** The face of a vise jaw where it bears on the stock. */
public enum JawSurface implements Worded {
  /** Smooth, hard, ground. */
  GROUND("ground"),
  /** Hard with teeth that bite. */
  SERRATED("serrated"),
  /** Aluminium or mild steel caps. */
  SOFT("soft"),
  /** Dished, nicked or bell-mouthed. */
  WORN("worn");

  private final String words;

  JawSurface(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
