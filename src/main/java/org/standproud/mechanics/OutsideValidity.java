package org.standproud.mechanics;

import java.util.Locale;

/** An input of a formula lies outside the range for which the formula is true. */
public final class OutsideValidity extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private OutsideValidity(String message) {
    super(message);
  }

  /**
   * Refuses a value outside a closed range, NaN included.
   *
   * @param quantity the name of the quantity
   * @param value its value in {@code unit}
   * @param least least value allowed in {@code unit}
   * @param greatest greatest value allowed in {@code unit}
   * @param unit the unit, empty for a pure number
   * @return the value
   * @throws OutsideValidity if the value is not within the range; the message names quantity,
   *     value, range and unit
   */
  public static double within(
      String quantity, double value, double least, double greatest, String unit) {
    if (!(value >= least && value <= greatest)) {
      throw new OutsideValidity(
          String.format(
              Locale.ROOT,
              "%s is %.5g %s; it must lie between %.5g and %.5g %s",
              quantity,
              value,
              unit,
              least,
              greatest,
              unit));
    }
    return value;
  }
}
