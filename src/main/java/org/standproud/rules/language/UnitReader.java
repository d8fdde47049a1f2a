package org.standproud.rules.language;

/** Parses a quantity in a card: {@code 12 mm}, {@code 0.5 in}, {@code 25 %}, {@code 2}. */
@FunctionalInterface
public interface UnitReader {

  /**
   * The quantity in SI.
   *
   * @param text the number with its unit; without a unit it is a pure number
   * @throws IllegalArgumentException if the text is not a quantity; the message says why and how to
   *     write one
   */
  Quantity read(String text);
}
