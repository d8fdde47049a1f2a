package org.standproud.mechanics.vibration;

/**
 * The steady swing of a stock, or of a stock and a cutter against each other, under a force that
 * repeats with every turn, in time: every harmonic and every mode with its phase.
 *
 * <p>Each mode is a damped oscillator {@code x'' + 2 zeta w x' + w^2 x = w^2 F/k}; over a step in
 * which the force runs straight its state after the step is an exact linear function of the state
 * before and of the force at both ends (Nigam and Jennings, Bull. Seism. Soc. Am. 59 (1969) 909,
 * from memory). The state that comes back to itself after one turn solves two linear equations.
 * What the modes leave of the static give follows the force without delay.
 */
public final class SteadySwing {

  /** A mode with less than this part of the static give follows the force with the rest. */
  private static final double LEAST_PART = 0.03;

  /** A mode that swings more than so often within a step follows the force, which runs straight. */
  private static final double SWINGS_A_STEP = 2;

  private SteadySwing() {}

  /**
   * The greatest distance from the mean place over a turn, m.
   *
   * @param forceN force at equal steps of one turn, N
   * @param revPerS turns in a second
   * @param frequenciesHz of the modes
   * @param stiffnessesNPerM of the modes at the place of the force
   * @param modes how many modes there are
   * @param dampingRatios of the modes
   * @param flexibilityMPerN static give at the place of the force
   */
  public static double amplitudeM(
      double[] forceN,
      double revPerS,
      double[] frequenciesHz,
      double[] stiffnessesNPerM,
      int modes,
      double[] dampingRatios,
      double flexibilityMPerN) {
    int steps = forceN.length;
    double[] swing = new double[steps];
    double rest = flexibilityMPerN;
    for (int m = 0; m < modes; m++) {
      boolean small = 1 / stiffnessesNPerM[m] < LEAST_PART * flexibilityMPerN;
      if (small || frequenciesHz[m] > SWINGS_A_STEP * revPerS * steps) {
        continue;
      }
      rest -= 1 / stiffnessesNPerM[m];
      add(
          forceN,
          1 / (revPerS * steps),
          frequenciesHz[m],
          stiffnessesNPerM[m],
          dampingRatios[m],
          swing);
    }
    double mean = 0;
    for (int k = 0; k < steps; k++) {
      swing[k] += Math.max(0, rest) * forceN[k];
      mean += swing[k] / steps;
    }
    double greatest = 0;
    for (double at : swing) {
      greatest = Math.max(greatest, Math.abs(at - mean));
    }
    return greatest;
  }

  private static void add(
      double[] forceN, double stepS, double hz, double stiffness, double zeta, double[] swing) {
    int n = forceN.length;
    double w = 2 * Math.PI * hz;
    double wd = w * Math.sqrt(1 - zeta * zeta);
    double decay = Math.exp(-zeta * w * stepS);
    double c = decay * Math.cos(wd * stepS);
    double s = decay * Math.sin(wd * stepS) / wd;
    // Free motion over a step, in place and speed.
    double a11 = c + zeta * w * s;
    double a12 = s;
    double a21 = -w * w * s;
    double a22 = c - zeta * w * s;
    // Forced motion: a straight force has the straight answer (F + slope (t - 2 zeta/w))/k.
    double lag = 2 * zeta / w;
    double give = 1 / stiffness;
    double rate = 1 / stepS;
    double x = 0;
    double v = 0;
    for (int round = 0; round < 2; round++) {
      double x0 = x;
      double v0 = v;
      for (int i = 0; i < n; i++) {
        double from = forceN[i];
        double to = forceN[i + 1 == n ? 0 : i + 1];
        double slope = (to - from) * rate;
        if (round == 1) {
          swing[i] += x;
        }
        double px = (from - slope * lag) * give;
        double pv = slope * give;
        double dx = x - px;
        double dv = v - pv;
        x = a11 * dx + a12 * dv + (to - slope * lag) * give;
        v = a21 * dx + a22 * dv + pv;
      }
      if (round == 0) {
        // x_n = A^n x_0 + b with x_0 = 0; the periodic state is (I - A^n)^-1 b.
        double turn = n * stepS;
        double d = Math.exp(-zeta * w * turn);
        double cn = d * Math.cos(wd * turn);
        double sn = d * Math.sin(wd * turn) / wd;
        double m11 = 1 - (cn + zeta * w * sn);
        double m12 = -sn;
        double m21 = w * w * sn;
        double m22 = 1 - (cn - zeta * w * sn);
        double det = m11 * m22 - m12 * m21;
        double bx = x - x0;
        double bv = v - v0;
        x = (m22 * bx - m12 * bv) / det;
        v = (m11 * bv - m21 * bx) / det;
      }
    }
  }
}
