package org.standproud.mechanics.force;

import java.util.List;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.engagement.EdgeInCut;

/**
 * One set of inputs of a pass without bands, except for the splits between the directions.
 *
 * @param law force law
 * @param splits splits to try with it
 * @param ring the teeth
 * @param feedM f_z in m, over 0.1 um
 * @param edge edge in cut
 */
record ForceCase(
    EdgeLaw law, List<ForceSplit> splits, ToothRing ring, double feedM, EdgeInCut edge) {

  /**
   * Refuses a chip for which no law holds.
   *
   * @throws OutsideValidity if the feed or the greatest chip is out of range
   */
  ForceCase {
    OutsideValidity.within("feed per tooth", feedM, 1e-7, 2e-3, "m");
    double chipM = ring.greatestBiteM(feedM) * edge.sine();
    OutsideValidity.within(
        "greatest chip (with run-out and missing teeth)",
        chipM,
        0,
        KienzleLaw.GREATEST_CHIP_M,
        "m");
    splits = List.copyOf(splits);
  }

  /** One term of the force on the whole edge of a tooth, before its direction factor. */
  double forcePerTerm(int tooth, int term, double sine) {
    double biteM = ring.biteM(tooth, feedM, Math.max(0, sine));
    return biteM < 0 ? 0 : edge.lengthM() * law.shape(term, biteM * edge.sine());
  }
}
