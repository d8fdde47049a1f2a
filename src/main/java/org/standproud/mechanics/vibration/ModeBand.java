package org.standproud.mechanics.vibration;

import org.standproud.setup.Band;

/**
 * One mode at the tool point for the softest, the likely and the stiffest hold.
 *
 * @param soft with the softest hold
 * @param likely with the likely hold
 * @param stiff with the stiffest hold
 */
public record ModeBand(Mode soft, Mode likely, Mode stiff) {

  /** Natural frequency, Hz. */
  public Band frequencyHz() {
    return Band.spanning(likely.frequencyHz(), soft.frequencyHz(), stiff.frequencyHz());
  }

  /** Modal stiffness at the tool point, N/m. */
  public Band stiffnessNPerM() {
    return Band.spanning(likely.stiffnessNPerM(), soft.stiffnessNPerM(), stiff.stiffnessNPerM());
  }

  /** Modal mass at the tool point, kg. */
  public Band massKg() {
    return Band.spanning(massKg(likely), massKg(soft), massKg(stiff));
  }

  private static double massKg(Mode mode) {
    return mode.stiffnessNPerM() / Math.pow(2 * Math.PI * mode.frequencyHz(), 2);
  }
}
