package org.standproud.setup;

/** What packing is made of. */
public enum PackingMaterial implements Worded {
  /** Soft copper. */
  COPPER("copper"),
  /** Soft aluminium. */
  ALUMINIUM("aluminium"),
  /** Soft brass. */
  BRASS("brass"),
  /** Mild or spring steel. */
  STEEL("steel"),
  /** Paper or card. */
  PAPER("paper");

  private final String words;

  PackingMaterial(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
