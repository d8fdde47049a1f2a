package org.standproud.api.recommendation;

import org.standproud.setup.Worded;

/** Which of the two envelopes to draw. */
enum EnvelopeKind implements Worded {
  /** Over feed per tooth or radial depth. */
  CUT("cut"),
  /** Over the spindle speed. */
  SPEED("speed");

  private final String words;

  EnvelopeKind(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
