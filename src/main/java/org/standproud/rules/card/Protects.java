package org.standproud.rules.card;

import org.standproud.setup.Worded;

/** What a card protects: the folder it lies in. */
public enum Protects implements Worded {
  /** That the stock stays in the vise. */
  HOLDING("holding"),
  /** That the cut pushes where it can be held. */
  DIRECTION("direction"),
  /** That the plate and the cutter do not chatter. */
  VIBRATION("vibration"),
  /** That the cutter lives. */
  CUTTER("cutter"),
  /** That the feed stays in control. */
  FEED("feed"),
  /** That it goes in at all. */
  REACH("reach"),
  /** That the surface and the size come out. */
  FINISH("finish"),
  /** That the input can be believed. */
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
