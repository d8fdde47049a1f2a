package org.standproud.mechanics.force;

/**
 * What is made of the Kienzle law below its range. It extrapolates badly under about 0.02 to 0.05
 * mm of chip, where the edge ploughs (German textbooks; from memory); how badly is not known, so
 * the three ends of the band take three readings.
 */
public enum ThinChip {
  /** The specific force no longer grows below 0.02 mm: the least force. */
  FROZEN,
  /** The law as it is written. */
  AS_WRITTEN,
  /**
   * A tooth in contact pushes as if its chip were at least 0.005 mm: the greatest force. In steel
   * this is 20 to 30 N per mm of edge, the size of published edge coefficients (7 to 28 N/mm).
   */
  FLOORED;

  static final double LEAST_SURE_CHIP_M = 0.02e-3;
  static final double PLOUGHING_CHIP_M = 0.005e-3;
}
