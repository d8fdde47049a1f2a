package org.standproud.rules.language;

import org.standproud.setup.units.Dimension;

/**
 * A number with its dimension, parsed from a text with a unit.
 *
 * @param si the number in the SI unit of the dimension; finite
 * @param dimension its dimension
 */
public record Quantity(double si, Dimension dimension) {

  /**
   * Refuses a number that is not finite.
   *
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public Quantity {
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException("is not a finite number");
    }
  }
}
