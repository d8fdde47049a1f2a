package org.standproud.mechanics.cutter;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * Whether an edge bites or rubs: a chip thinner than a part of the edge rounding is not cut but
 * pressed under.
 *
 * <p>Least chip = k r_e with k from 0.2 to 0.4, likely 0.3: the usual range for steels and light
 * alloys, from memory. Wojciechowski, Materials 15(1) (2022) 59, reviews the measured and computed
 * values; its figures were not re-read. A ratio below 1 rubs.
 */
public final class LeastChip {

  /** Least chip over edge rounding. */
  public static final Band OVER_EDGE_RADIUS = new Band(0.2, 0.3, 0.4);

  private LeastChip() {}

  /**
   * Thickest chip over the least chip that is cut; below 1 the edge rubs.
   *
   * @param thickestChipM thickest chip a tooth meets in m, 0 to 0.05
   * @param edgeRadiusM rounding of the edge as it is now in m, 0.1 um to 1 mm
   * @throws OutsideValidity if an input is out of its range
   */
  public static Band chipOverLeast(Band thickestChipM, Band edgeRadiusM) {
    OutsideValidity.within("thickest chip", thickestChipM.low(), 0, 0.05, "m");
    OutsideValidity.within("thickest chip", thickestChipM.high(), 0, 0.05, "m");
    OutsideValidity.within("edge radius", edgeRadiusM.low(), 1e-7, 1e-3, "m");
    OutsideValidity.within("edge radius", edgeRadiusM.high(), 1e-7, 1e-3, "m");
    return thickestChipM.over(OVER_EDGE_RADIUS.times(edgeRadiusM));
  }
}
