package org.standproud.setup;

/** What the pass is for. */
public enum Stage implements Worded {
  /** Take stock off. */
  ROUGH("rough"),
  /** Leave the size and the surface. */
  FINISH("finish");

  private final String words;

  Stage(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
