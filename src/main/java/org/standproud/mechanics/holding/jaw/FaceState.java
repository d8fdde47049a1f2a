package org.standproud.mechanics.holding.jaw;

/** Whether the gripped faces carry oil. */
public enum FaceState {
  /** Wiped and degreased. */
  CLEAN,
  /** Oil or coolant on the faces. */
  OILY,
  /** Not known: the band of the faces as usually found in a shop. */
  UNKNOWN
}
