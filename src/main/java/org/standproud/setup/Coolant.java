package org.standproud.setup;

/** What runs over the cutter. */
public enum Coolant implements Worded {
  /** Nothing. */
  DRY("dry"),
  /** A jet of air, which clears the chips. */
  AIR("air blast"),
  /** A little oil in a jet of air. */
  MIST("oil mist"),
  /** Oil without water. */
  OIL("neat oil"),
  /** Emulsion or solution in water, as a flood or by hand. */
  WATER("water-based");

  private final String words;

  Coolant(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
