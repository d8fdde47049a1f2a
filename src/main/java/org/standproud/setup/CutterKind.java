package org.standproud.setup;

/** The family of a milling cutter (ISO 13399 words). */
public enum CutterKind implements Worded {
  /** Face mill with inserts. */
  FACE_MILL("face mill"),
  /** Shell end mill on an arbor. */
  SHELL_MILL("shell mill"),
  /** End mill with a shank. */
  END_MILL("end mill");

  private final String words;

  CutterKind(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
