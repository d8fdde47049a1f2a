package org.standproud.web.recorded;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers of an answer, already in the reader's unit, to three figures. */
final class ThreeFigures {

  private static final MathContext THREE = new MathContext(3);
  private static final double NOTHING = 1e-3;

  private ThreeFigures() {}

  static String of(double value) {
    if (Math.abs(value) < NOTHING) {
      return "0";
    }
    return BigDecimal.valueOf(value).round(THREE).stripTrailingZeros().toPlainString();
  }
}
