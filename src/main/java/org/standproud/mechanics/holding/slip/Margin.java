package org.standproud.mechanics.holding.slip;

/** Capacity over demand: above one it holds. */
public final class Margin {

  /** The margin reported where nothing, or next to nothing, is asked of the hold. */
  public static final double GREATEST = 1000;

  private Margin() {}

  /**
   * Capacity over demand, never more than {@link #GREATEST}.
   *
   * @param capacity what the hold can take, not negative
   * @param demand what is asked of it, not negative, same unit
   */
  public static double of(double capacity, double demand) {
    return demand * GREATEST <= capacity ? GREATEST : capacity / demand;
  }
}
