package org.standproud.mechanics.vibration;

import org.standproud.mechanics.OutsideValidity;

/**
 * A one-degree oscillator that stands for one mode of a structure at the tool point.
 *
 * @param frequencyHz natural frequency, undamped, Hz
 * @param stiffnessNPerM modal stiffness at the tool point, N/m
 */
public record Mode(double frequencyHz, double stiffnessNPerM) {

  /**
   * Refuses what cannot vibrate.
   *
   * @throws OutsideValidity if a value is not positive and finite
   */
  public Mode {
    OutsideValidity.within("natural frequency", frequencyHz, 1e-6, 1e12, "Hz");
    OutsideValidity.within("modal stiffness", stiffnessNPerM, 1e-9, 1e16, "N/m");
  }
}
