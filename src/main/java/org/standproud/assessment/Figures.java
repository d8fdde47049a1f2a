package org.standproud.assessment;

import java.math.BigDecimal;
import java.math.MathContext;

/** Rounds numbers to seven figures, so that a record carries no digits without a meaning. */
final class Figures {

  private static final int COUNT = 7;
  private static final MathContext CONTEXT = new MathContext(COUNT);

  /** The powers of ten that a double holds exactly. */
  private static final double[] POWERS = new double[23];

  static {
    for (int i = 0; i < POWERS.length; i++) {
      POWERS[i] = Double.parseDouble("1e" + i);
    }
  }

  private Figures() {}

  /**
   * The nearest number of seven significant figures. Whole number and power are exact and divided
   * once, so the result is the double nearest to the decimal and is written in as many digits.
   *
   * @param number any finite number
   */
  static double of(double number) {
    if (number == 0) {
      return 0;
    }
    int places = COUNT - 1 - (int) Math.floor(Math.getExponent(number) * Math.log10(2));
    if (places <= -POWERS.length || places >= POWERS.length) {
      return new BigDecimal(number).round(CONTEXT).doubleValue();
    }
    // A power of two says the power of ten to within one.
    if (Math.abs(scaled(number, places)) >= POWERS[COUNT]) {
      places--;
    }
    double whole = Math.rint(scaled(number, places));
    return places < 0 ? whole * POWERS[-places] : whole / POWERS[places];
  }

  private static double scaled(double number, int places) {
    return places < 0 ? number / POWERS[-places] : number * POWERS[places];
  }
}
