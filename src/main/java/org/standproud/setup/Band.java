package org.standproud.setup;

import java.util.function.DoubleUnaryOperator;

/**
 * A quantity that is not known exactly: the least, the likely and the greatest value it may have,
 * all in one SI unit. A value known exactly is a band of no width.
 *
 * @param low least value, finite
 * @param likely likely value, {@code low <= likely <= high}
 * @param high greatest value, finite
 */
public record Band(double low, double likely, double high) {

  /**
   * Refuses a band that is not finite or not in order.
   *
   * @throws IllegalArgumentException if a bound is NaN or infinite, or the three are out of order
   */
  public Band {
    if (!Double.isFinite(low) || !Double.isFinite(high) || !(low <= likely && likely <= high)) {
      throw new IllegalArgumentException(
          "a band needs finite values in order, got " + low + ", " + likely + ", " + high);
    }
  }

  /** A value known exactly. */
  public static Band exactly(double value) {
    return new Band(value, value, value);
  }

  /** A band with its likely value at the middle. */
  public static Band between(double low, double high) {
    return new Band(low, low + (high - low) / 2, high);
  }

  /**
   * The band spanned by a likely value and other values computed at the ends of the inputs.
   *
   * @param likely value at the likely inputs
   * @param others values at the other inputs tried
   */
  public static Band spanning(double likely, double... others) {
    double low = likely;
    double high = likely;
    for (double other : others) {
      low = Math.min(low, other);
      high = Math.max(high, other);
    }
    return new Band(low, likely, high);
  }

  /** The band of the lesser of this quantity and another that varies with it. */
  public Band orLess(Band other) {
    return new Band(
        Math.min(low, other.low), Math.min(likely, other.likely), Math.min(high, other.high));
  }

  /** Whether the value is known exactly. */
  public boolean isExact() {
    return low == high;
  }

  /**
   * The value at a place of the band by straight lines: 0 its least, one half its likely, 1 its
   * greatest.
   */
  public double part(double place) {
    return place < 0.5
        ? low + 2 * place * (likely - low)
        : likely + (2 * place - 1) * (high - likely);
  }

  /** High less low, in the unit of the band; never negative. */
  public double width() {
    return high - low;
  }

  /** The band of a quantity that rises or falls steadily with this one. */
  public Band map(DoubleUnaryOperator monotone) {
    double atLow = monotone.applyAsDouble(low);
    double atHigh = monotone.applyAsDouble(high);
    double atLikely = monotone.applyAsDouble(likely);
    return spanning(atLikely, atLow, atHigh);
  }

  /** This band multiplied by a factor of either sign. */
  public Band times(double factor) {
    return map(v -> v * factor);
  }

  /** The product of two independent bands of values that are not negative. */
  public Band times(Band other) {
    return spanning(
        likely * other.likely,
        low * other.low,
        low * other.high,
        high * other.low,
        high * other.high);
  }

  /** The sum of two independent bands. */
  public Band plus(Band other) {
    return new Band(low + other.low, likely + other.likely, high + other.high);
  }

  /**
   * The quotient of two independent bands.
   *
   * @param divisor a band that does not hold zero
   * @throws IllegalArgumentException if the divisor may be zero
   */
  public Band over(Band divisor) {
    if (divisor.low <= 0 && divisor.high >= 0) {
      throw new IllegalArgumentException("the divisor may be zero: " + divisor);
    }
    return spanning(
        likely / divisor.likely,
        low / divisor.low,
        low / divisor.high,
        high / divisor.low,
        high / divisor.high);
  }
}
