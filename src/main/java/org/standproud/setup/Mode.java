package org.standproud.setup;

/** Which way a tooth meets the feed (ISO 14649 words). */
public enum Mode implements Worded {
  /** The tooth moves with the feed of the work: thick to thin. */
  CLIMB("climb"),
  /** The tooth moves against the feed of the work: thin to thick. */
  CONVENTIONAL("conventional"),
  /** The arc in cut spans both, as in face milling over the centre line. */
  BOTH("both");

  private final String words;

  Mode(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
