package org.standproud.mechanics.holding.jaw;

import org.standproud.setup.Hold;
import org.standproud.setup.JawFaces;

/** Whether the gripped faces carry oil. */
public enum FaceState {
  /** Dry, or wiped before clamping. */
  CLEAN,
  /** Oil or coolant on the faces. */
  OILY,
  /** Not known: anything from oily to dry. */
  UNKNOWN;

  /** The state that a hold gives. */
  public static FaceState of(Hold hold) {
    JawFaces faces = hold.faces();
    return faces == null ? UNKNOWN : faces == JawFaces.OILY ? OILY : CLEAN;
  }
}
