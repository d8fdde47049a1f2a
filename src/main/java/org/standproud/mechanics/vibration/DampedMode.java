package org.standproud.mechanics.vibration;

import org.standproud.mechanics.OutsideValidity;

/**
 * A mode with its damping.
 *
 * @param frequencyHz natural frequency, undamped, Hz
 * @param dampingRatio damping over critical damping, 0.0001 to 0.5
 * @param stiffnessNPerM modal stiffness at the tool point, N/m
 */
public record DampedMode(double frequencyHz, double dampingRatio, double stiffnessNPerM) {

  /**
   * Refuses what cannot vibrate.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public DampedMode {
    OutsideValidity.within("natural frequency", frequencyHz, 1e-6, 1e12, "Hz");
    OutsideValidity.within("damping ratio", dampingRatio, 1e-4, 0.5, "");
    OutsideValidity.within("modal stiffness", stiffnessNPerM, 1e-9, 1e16, "N/m");
  }

  /**
   * Adds the displacement per force at frequencies, m/N: {@code 1/(k (1 - r^2 + 2 i zeta r))} with
   * {@code r = f/f_n}.
   *
   * @param hz frequencies, Hz
   * @param re real parts, added to, as many
   * @param im imaginary parts, added to, as many
   */
  void addResponse(double[] hz, double[] re, double[] im) {
    for (int i = 0; i < hz.length; i++) {
      double r = hz[i] / frequencyHz;
      double spring = 1 - r * r;
      double damper = 2 * dampingRatio * r;
      double compliance = 1 / (stiffnessNPerM * (spring * spring + damper * damper));
      re[i] += spring * compliance;
      im[i] -= damper * compliance;
    }
  }
}
