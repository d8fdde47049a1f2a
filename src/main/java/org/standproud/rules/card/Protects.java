package org.standproud.rules.card;

import org.standproud.setup.Worded;

/** What a card protects: its folder. */
public enum Protects implements Worded {
  /** The hold of the stock in the vise. */
  HOLDING("holding"),
  /** The direction of the cut. */
  DIRECTION("direction"),
  /** Freedom from chatter of plate and cutter. */
  VIBRATION("vibration"),
  /** The life of the cutter. */
  CUTTER("cutter"),
  /** The control of the feed. */
  FEED("feed"),
  /** Reach and clearance. */
  REACH("reach"),
  /** Surface and size. */
  FINISH("finish"),
  /** The plausibility of the input. */
  DATA("data");

  private final String words;

  Protects(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
