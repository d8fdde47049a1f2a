package org.standproud.mechanics.vibration;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;

/**
 * A force that repeats with every turn, as the sum over k of {@code a_k cos k theta + b_k sin k
 * theta}, with theta the angle of the spindle. Immutable.
 */
public final class ForceHarmonics {

  private final double[] cos;
  private final double[] sin;

  private ForceHarmonics(double[] cos, double[] sin) {
    this.cos = cos;
    this.sin = sin;
  }

  /**
   * The series of equally spaced samples.
   *
   * @param samplesN samples of one turn, N, 8 to 4096; the first at theta zero
   * @param harmonics highest harmonic kept, less than half the samples
   * @throws OutsideValidity if a number is out of range
   */
  public static ForceHarmonics of(double[] samplesN, int harmonics) {
    int n = samplesN.length;
    within("force samples", n, 8, 4096, "");
    int most = (n - 1) / 2;
    within("harmonics", harmonics, 0, most, "");
    double[] c = new double[n];
    double[] s = new double[n];
    for (int j = 0; j < n; j++) {
      within("force", samplesN[j], -1e7, 1e7, "N");
      c[j] = Math.cos(2 * Math.PI * j / n);
      s[j] = Math.sin(2 * Math.PI * j / n);
    }
    double[] cos = new double[harmonics + 1];
    double[] sin = new double[harmonics + 1];
    for (int k = 0; k <= harmonics; k++) {
      for (int j = 0; j < n; j++) {
        int at = (int) ((long) k * j % n);
        cos[k] += samplesN[j] * c[at];
        sin[k] += samplesN[j] * s[at];
      }
      cos[k] *= (k == 0 ? 1.0 : 2.0) / n;
      sin[k] *= 2.0 / n;
    }
    return new ForceHarmonics(cos, sin);
  }

  /**
   * This force times a factor and another times its own, as a law that is a sum of shapes needs it.
   *
   * @param other as many harmonics
   */
  public ForceHarmonics times(double factor, ForceHarmonics other, double otherFactor) {
    within("harmonics", other.cos.length, cos.length, cos.length, "");
    double[] a = new double[cos.length];
    double[] b = new double[cos.length];
    for (int k = 0; k < a.length; k++) {
      a[k] = factor * cos[k] + otherFactor * other.cos[k];
      b[k] = factor * sin[k] + otherFactor * other.sin[k];
    }
    return new ForceHarmonics(a, b);
  }

  /** Highest harmonic. */
  public int highest() {
    return cos.length - 1;
  }

  /** Mean force, N. */
  public double meanN() {
    return cos[0];
  }

  double cos(int k) {
    return cos[k];
  }

  double sin(int k) {
    return sin[k];
  }
}
