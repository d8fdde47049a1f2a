package org.standproud.setup;

/** How fast a hand wheel is turned, in the words of a shop. */
public enum HandFeedPace implements Worded {
  /** Creeping. */
  SLOW("slow"),
  /** As one winds without thinking. */
  NORMAL("normal"),
  /** As fast as the cut bears. */
  QUICK("quick");

  private final String words;

  HandFeedPace(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
