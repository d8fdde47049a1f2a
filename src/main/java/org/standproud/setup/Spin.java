package org.standproud.setup;

/** Sense of rotation of the spindle seen from above the machine looking down. */
public enum Spin implements Worded {
  /** The usual right-hand cutter. */
  CLOCKWISE("clockwise"),
  /** A left-hand cutter. */
  COUNTERCLOCKWISE("counterclockwise");

  private final String words;

  Spin(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
