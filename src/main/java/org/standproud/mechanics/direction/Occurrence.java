package org.standproud.mechanics.direction;

import org.standproud.setup.Band;

/** Whether something happens, given a band of its size. */
public enum Occurrence {
  /** At no value of the unknowns. */
  NO,
  /** At some values of the unknowns, but not at the likely ones. */
  MAYBE,
  /** At the likely values. */
  YES;

  /**
   * Judges a push.
   *
   * @param peakN its size in N
   * @param negligibleN size that does not count, in N
   */
  static Occurrence of(Band peakN, double negligibleN) {
    if (peakN.likely() > negligibleN) {
      return YES;
    }
    return peakN.high() > negligibleN ? MAYBE : NO;
  }
}
