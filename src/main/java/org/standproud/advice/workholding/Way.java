package org.standproud.advice.workholding;

import org.standproud.setup.Band;
import org.standproud.setup.Worded;

/**
 * The other ways to hold a plate. Set-up times in minutes and stiffnesses of what stands behind the
 * plate at its top in N/m: common practice, no source.
 */
enum Way implements Worded {
  /** Against an angle plate bolted to the table. */
  ANGLE_PLATE(
      "clamped to an angle plate",
      "Backed to just below the cut, the plate has no lever left to tip over",
      20,
      35,
      60,
      new Band(50e6, 150e6, 400e6)),
  /** Against the side of the vise. */
  VISE_SIDE(
      "clamped against the side of the vise",
      "The body of the vise backs it higher than its jaws can grip",
      20,
      30,
      60,
      new Band(100e6, 300e6, 800e6)),
  /** Flat under straps. */
  TABLE(
      "flat on the table under strap clamps",
      "Lying on its broad side it has nothing to tip over and no height to ring",
      15,
      25,
      45,
      Band.exactly(1e9));

  private final String words;
  private final String why;
  private final Band setUpMin;
  private final Band backingNPerM;

  Way(String words, String why, double least, double likely, double greatest, Band backingNPerM) {
    this.words = words;
    this.why = why;
    this.setUpMin = new Band(least, likely, greatest);
    this.backingNPerM = backingNPerM;
  }

  @Override
  public String words() {
    return words;
  }

  /** Why it holds, without the full stop. */
  String why() {
    return why;
  }

  /** Stiffness of what stands behind the plate, across it at its top, in N/m. */
  Band backingNPerM() {
    return backingNPerM;
  }

  Band setUpMin() {
    return setUpMin;
  }
}
