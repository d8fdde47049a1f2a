package org.standproud.setup;

/** One of the two jaws of a vise. */
public enum JawSide implements Worded {
  /** The jaw that does not move; it lies on the positive Y side. */
  FIXED("fixed jaw"),
  /** The jaw that the screw moves; it lies on the negative Y side. */
  MOVABLE("movable jaw");

  private final String words;

  JawSide(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
