package org.standproud.setup;

/** What stands behind a plate above the jaws. */
public enum BackingKind implements Worded {
  /** A screw jack set sideways between the plate and something bolted down. */
  JACK("jack"),
  /** A block bolted to the table or to the vise. */
  BLOCK("block"),
  /** An angle plate bolted to the table. */
  ANGLE_PLATE("angle plate");

  private final String words;

  BackingKind(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
