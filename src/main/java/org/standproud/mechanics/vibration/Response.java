package org.standproud.mechanics.vibration;

import java.util.List;

/**
 * Displacement per force of modes together over frequencies, m/N, real and imaginary parts apart.
 *
 * @param re real parts
 * @param im imaginary parts
 */
record Response(double[] re, double[] im) {

  /**
   * The sum of modes; nothing without any.
   *
   * @param modes the modes
   * @param hz frequencies, Hz
   */
  static Response of(List<DampedMode> modes, double[] hz) {
    Response sum = new Response(new double[hz.length], new double[hz.length]);
    for (DampedMode mode : modes) {
      mode.addResponse(hz, sum.re, sum.im);
    }
    return sum;
  }

  /** This one times a factor and another times its own. */
  Response times(double factor, Response other, double otherFactor) {
    Response sum = new Response(new double[re.length], new double[re.length]);
    for (int i = 0; i < re.length; i++) {
      sum.re[i] = factor * re[i] + otherFactor * other.re[i];
      sum.im[i] = factor * im[i] + otherFactor * other.im[i];
    }
    return sum;
  }

  /** This one times a factor. */
  Response times(double factor) {
    return times(factor, this, 0);
  }
}
