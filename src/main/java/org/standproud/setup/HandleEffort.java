package org.standproud.setup;

/** How hard the handle of a vise was pulled, in the words of a shop. */
public enum HandleEffort implements Worded {
  /** Spun up and snugged with one hand. */
  HAND_TIGHT("hand tight"),
  /** An ordinary pull with one arm. */
  FIRM("firm"),
  /** With weight behind it. */
  HARD("hard"),
  /** Struck home with a mallet. */
  MALLET("mallet");

  private final String words;

  HandleEffort(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
