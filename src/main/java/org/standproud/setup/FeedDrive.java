package org.standproud.setup;

/** What moves the table. */
public enum FeedDrive implements Worded {
  /** A hand wheel. */
  HAND("hand"),
  /** A power feed or a servo axis. */
  POWER("power");

  private final String words;

  FeedDrive(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
