package org.standproud.advice.hold;

import org.standproud.setup.Band;
import org.standproud.setup.Worded;

/** The other ways to hold a plate. Set-up times in minutes: common practice, no source. */
enum Way implements Worded {
  /** Against an angle plate bolted to the table. */
  ANGLE_PLATE("clamped to an angle plate", 20, 35, 60),
  /** Against the side of the vise. */
  VISE_SIDE("clamped against the side of the vise", 20, 30, 60),
  /** Flat under straps. */
  TABLE("flat on the table under strap clamps", 15, 25, 45);

  private final String words;
  private final Band setUpMin;

  Way(String words, double least, double likely, double greatest) {
    this.words = words;
    this.setUpMin = new Band(least, likely, greatest);
  }

  @Override
  public String words() {
    return words;
  }

  Band setUpMin() {
    return setUpMin;
  }
}
