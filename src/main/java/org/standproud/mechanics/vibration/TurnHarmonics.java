package org.standproud.mechanics.vibration;

/**
 * Amplitudes of the Fourier series of a force over one turn, from equally spaced samples.
 *
 * <p>Samples as far before the start as after it are folded together first: cosines see only their
 * sum, sines only their difference. A fast transform would ask for a power of two of samples, which
 * no pitch divides: every tooth would then jump in at another part of a step, and the forces of
 * equal teeth would not be alike.
 */
final class TurnHarmonics {

  /** Harmonics of the turn that are taken, as far as the samples carry them. */
  private static final int MOST = 240;

  private TurnHarmonics() {}

  /**
   * The amplitudes.
   *
   * @param samples samples of a force in N
   * @return amplitudes in N by harmonic of the turn; index 0 is the size of the mean
   */
  static double[] of(double[] samples) {
    int n = samples.length;
    int half = (n - 1) / 2;
    Turn turn = Turn.of(n);
    double[] even = new double[half + 1];
    double[] odd = new double[half + 1];
    for (int j = 1; j <= half; j++) {
      even[j] = samples[j] + samples[n - j];
      odd[j] = samples[j] - samples[n - j];
    }
    double[] amplitudes = new double[upTo(n) + 1];
    for (int k = 0; k < amplitudes.length; k++) {
      double opposite = n % 2 == 0 ? samples[n / 2] * (k % 2 == 0 ? 1 : -1) : 0;
      double re = samples[0] + opposite;
      double im = 0;
      int at = k;
      for (int j = 1; j <= half; j++) {
        re += even[j] * turn.cos[at];
        im += odd[j] * turn.sin[at];
        at += k;
        if (at >= n) {
          at -= n;
        }
      }
      amplitudes[k] = (k == 0 ? 1 : 2) * Math.sqrt(re * re + im * im) / n;
    }
    return amplitudes;
  }

  /** Harmonics that so many samples of a turn carry. */
  static int upTo(int samples) {
    return Math.min(MOST, (samples - 1) / 2);
  }

  /** Cosine and sine at equal steps of a turn; the last number of steps asked for is kept. */
  private record Turn(double[] cos, double[] sin) {

    private static volatile Turn last = new Turn(new double[0], new double[0]);

    static Turn of(int steps) {
      Turn kept = last;
      if (kept.cos.length != steps) {
        double[] cos = new double[steps];
        double[] sin = new double[steps];
        for (int j = 0; j < steps; j++) {
          cos[j] = Math.cos(2 * Math.PI * j / steps);
          sin[j] = Math.sin(2 * Math.PI * j / steps);
        }
        kept = new Turn(cos, sin);
        last = kept;
      }
      return kept;
    }
  }
}
