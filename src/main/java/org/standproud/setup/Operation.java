package org.standproud.setup;

/** Which face of the standing plate is milled. */
public enum Operation implements Worded {
  /** The narrow top edge, with the end of the cutter, spindle upright. */
  TOP_EDGE("top edge"),
  /** A broad side above the jaws, with the periphery of the cutter, spindle upright. */
  BROAD_SIDE("broad side");

  private final String words;

  Operation(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
