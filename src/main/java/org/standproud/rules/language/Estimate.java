package org.standproud.rules.language;

import org.standproud.setup.Band;

/** What an expression comes to: a band, or nothing with the reason. */
public sealed interface Estimate {

  /**
   * A number with its band.
   *
   * @param band least, likely and greatest value in SI
   */
  record Known(Band band) implements Estimate {}

  /**
   * No number.
   *
   * @param reason why there is none, as a machinist would say it
   */
  record Unknown(String reason) implements Estimate {}

  /** The band of these three, or unknown if a number left the range of what can be computed. */
  static Estimate of(double low, double likely, double high) {
    if (!Double.isFinite(low) || !Double.isFinite(high) || Double.isNaN(likely)) {
      return new Unknown("the number is too large to be judged");
    }
    return new Known(new Band(low, Math.min(high, Math.max(low, likely)), high));
  }
}
