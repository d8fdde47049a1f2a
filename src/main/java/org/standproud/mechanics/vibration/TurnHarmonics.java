package org.standproud.mechanics.vibration;

import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/**
 * Amplitudes of the Fourier series of two forces over one turn, from equally spaced samples.
 *
 * <p>One complex transform serves both: with {@code z = f + i g}, {@code F_k = (Z_k + conj
 * Z_(n-k))/2} and {@code G_k = (Z_k - conj Z_(n-k))/2i}; the amplitude of harmonic k is {@code 2
 * |F_k|/n}, of the mean {@code |F_0|/n} (the transform of real sequences, any textbook of signal
 * processing, for instance Oppenheim and Schafer, Discrete-Time Signal Processing, from memory).
 *
 * @param one amplitudes of the first force in N by harmonic of the turn; index 0 is the size of the
 *     mean
 * @param other the same of the other force
 */
record TurnHarmonics(double[] one, double[] other) {

  /** Harmonics of the turn that are taken, as far as the samples carry them. */
  private static final int MOST = 240;

  /**
   * The amplitudes.
   *
   * @param oneN samples of a force in N, a power of two of them
   * @param otherN as many samples of another force in N
   */
  static TurnHarmonics of(double[] oneN, double[] otherN) {
    int n = oneN.length;
    double[] re = oneN.clone();
    double[] im = otherN.clone();
    FastFourierTransformer.transformInPlace(
        new double[][] {re, im}, DftNormalization.STANDARD, TransformType.FORWARD);
    double[] one = new double[upTo(n) + 1];
    double[] other = new double[one.length];
    for (int k = 0; k < one.length; k++) {
      int back = (n - k) % n;
      double scale = (k == 0 ? 0.5 : 1.0) / n;
      one[k] = scale * size(re[k] + re[back], im[k] - im[back]);
      other[k] = scale * size(im[k] + im[back], re[back] - re[k]);
    }
    return new TurnHarmonics(one, other);
  }

  private static double size(double re, double im) {
    return Math.sqrt(re * re + im * im);
  }

  /** Harmonics that so many samples of a turn carry. */
  static int upTo(int samples) {
    return Math.min(MOST, samples / 2 - 1);
  }
}
