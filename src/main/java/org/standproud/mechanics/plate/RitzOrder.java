package org.standproud.mechanics.plate;

import org.standproud.mechanics.OutsideValidity;

/**
 * How many polynomials stand for the shape of the plate: more is nearer and slower. The computed
 * plate is never softer than the true one.
 *
 * @param lengthTerms polynomials along the jaws for each symmetry (even, odd), 2 to 16
 * @param heightTerms polynomials up the height, 3 to 16
 */
public record RitzOrder(int lengthTerms, int heightTerms) {

  /** For an answer within a millisecond. */
  public static final RitzOrder EVIDENCE = new RitzOrder(7, 6);

  /** For plots and checks. */
  public static final RitzOrder FINE = new RitzOrder(14, 14);

  /**
   * Refuses orders outside the tables.
   *
   * @throws OutsideValidity if a number of terms is out of range
   */
  public RitzOrder {
    OutsideValidity.within("terms along the length", lengthTerms, 2, 16, "");
    OutsideValidity.within("terms up the height", heightTerms, 3, 16, "");
  }
}
