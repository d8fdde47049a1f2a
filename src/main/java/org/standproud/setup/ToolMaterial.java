package org.standproud.setup;

/** What the cutting edge is made of. */
public enum ToolMaterial implements Worded {
  /** High-speed steel. */
  HSS("hss"),
  /** Cemented carbide. */
  CARBIDE("carbide");

  private final String words;

  ToolMaterial(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
