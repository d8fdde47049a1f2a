package org.standproud.rules.language;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.units.Dimension;

/**
 * The dimension of an expression as exponents of length, mass, time and plane angle. The angle is a
 * dimension of its own, so that an angle cannot be compared with a pure number and read as radians
 * by mistake; an arc, angle times radius, is therefore not a length here.
 *
 * @param length exponent of the metre
 * @param mass exponent of the kilogram
 * @param time exponent of the second
 * @param angle exponent of the radian
 * @param any true for the number 0, which fits every dimension
 */
record Measure(int length, int mass, int time, int angle, boolean any) {

  static final Measure NUMBER = new Measure(0, 0, 0, 0, false);

  /** The measure of the number 0. */
  static final Measure ANY = new Measure(0, 0, 0, 0, true);

  static Measure of(Dimension dimension) {
    return switch (dimension) {
      case NUMBER -> NUMBER;
      case LENGTH -> exponents(1, 0, 0, 0);
      case ANGLE -> exponents(0, 0, 0, 1);
      case FORCE -> exponents(1, 1, -2, 0);
      case TORQUE -> exponents(2, 1, -2, 0);
      case STRESS -> exponents(-1, 1, -2, 0);
      case POWER -> exponents(2, 1, -3, 0);
      case SPEED -> exponents(1, 0, -1, 0);
      case FREQUENCY -> exponents(0, 0, -1, 0);
      case STIFFNESS -> exponents(0, 1, -2, 0);
      case MASS -> exponents(0, 1, 0, 0);
      case DENSITY -> exponents(-3, 1, 0, 0);
      case TIME -> exponents(0, 0, 1, 0);
    };
  }

  private static Measure exponents(int length, int mass, int time, int angle) {
    return new Measure(length, mass, time, angle, false);
  }

  boolean fits(Measure other) {
    return any || other.any || equals(other);
  }

  /** The measure of a sum or a choice of two that match. */
  Measure or(Measure other) {
    return any ? other : this;
  }

  Measure times(Measure other) {
    return any || other.any
        ? ANY
        : exponents(
            length + other.length, mass + other.mass, time + other.time, angle + other.angle);
  }

  Measure per(Measure other) {
    return any
        ? ANY
        : exponents(
            length - other.length, mass - other.mass, time - other.time, angle - other.angle);
  }

  /** The dimension with these exponents, or null if it has no name. */
  @Nullable Dimension dimension() {
    for (Dimension dimension : Dimension.values()) {
      if (!any && of(dimension).equals(this)) {
        return dimension;
      }
    }
    return any ? Dimension.NUMBER : null;
  }

  /** In a machinist's words: "a length", "a pure number". */
  String words() {
    if (any) {
      return "the number 0";
    }
    Dimension dimension = dimension();
    if (dimension != null) {
      return dimension == Dimension.NUMBER
          ? "a pure number"
          : (dimension == Dimension.ANGLE ? "an " : "a ")
              + dimension.name().toLowerCase(Locale.ROOT);
    }
    return ("a quantity in" + unit("m", length) + unit("kg", mass) + unit("s", time))
        + unit("rad", angle);
  }

  private static String unit(String symbol, int exponent) {
    return exponent == 0 ? "" : " " + symbol + (exponent == 1 ? "" : exponent);
  }
}
