package org.standproud.mechanics.holding.jaw;

import org.standproud.setup.Hold;
import org.standproud.setup.JawFaces;

/** Whether the gripped faces carry oil. */
public enum FaceState {
  /** Wiped and degreased. */
  CLEAN,
  /** Oil or coolant on the faces. */
  OILY,
  /** Not known: the band of the faces as usually found in a shop. */
  UNKNOWN;

  /** The state that a hold gives; coolant gets between faces that nothing is said about. */
  public static FaceState of(Hold hold) {
    JawFaces faces = hold.faces();
    if (faces == JawFaces.DRY) {
      return CLEAN;
    }
    return faces == JawFaces.WIPED ? UNKNOWN : OILY;
  }
}
