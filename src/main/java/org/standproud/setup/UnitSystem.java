package org.standproud.setup;

/** The system of units of a request and its answer. */
public enum UnitSystem implements Worded {
  /** mm, N, kW, m/min, mm/min. */
  METRIC("metric"),
  /** in, lbf, hp, ft/min, in/min. */
  INCH("inch");

  private final String words;

  UnitSystem(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
