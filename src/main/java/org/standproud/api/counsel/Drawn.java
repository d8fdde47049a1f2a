package org.standproud.api.counsel;

import org.standproud.setup.Worded;

/** Which of the two envelopes is drawn. */
enum Drawn implements Worded {
  /** Over feed per tooth or radial depth. */
  CUT("cut"),
  /** Over the spindle speed. */
  SPEED("speed");

  private final String words;

  Drawn(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
