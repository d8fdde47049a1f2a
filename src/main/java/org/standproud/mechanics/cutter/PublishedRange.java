package org.standproud.mechanics.cutter;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * A cutting speed or feed against the union of the ranges that handbooks print for it. The spread
 * between handbooks is about half of the value either way, so only membership is judged.
 *
 * @param overLeast value over the least published one; below 1 it is under the range
 * @param overGreatest value over the greatest published one; above 1 it is over the range
 */
public record PublishedRange(Band overLeast, Band overGreatest) {

  /**
   * Sets a value against a range.
   *
   * @param quantity what it is, for the message
   * @param value the value in any unit, not negative
   * @param least least published value in the same unit, above zero
   * @param greatest greatest published value in the same unit, not less than the least
   * @throws OutsideValidity if the value is negative or the range is no range
   */
  public static PublishedRange of(String quantity, Band value, double least, double greatest) {
    OutsideValidity.within(quantity, value.low(), 0, Double.MAX_VALUE, "");
    OutsideValidity.within("least published " + quantity, least, 1e-9, 1e6, "");
    OutsideValidity.within("greatest published " + quantity, greatest, least, 1e6, "");
    return new PublishedRange(value.times(1 / least), value.times(1 / greatest));
  }

  /** Whether the whole band of the value lies within the range. */
  public boolean surelyWithin() {
    return overLeast.low() >= 1 && overGreatest.high() <= 1;
  }

  /** Whether some part of the band of the value lies within the range. */
  public boolean perhapsWithin() {
    return overLeast.high() >= 1 && overGreatest.low() <= 1;
  }
}
