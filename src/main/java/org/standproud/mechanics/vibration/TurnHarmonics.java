package org.standproud.mechanics.vibration;

/**
 * Amplitudes of the Fourier series of a force over one turn, from equally spaced samples.
 *
 * <p>Samples as far before the start as after it are folded together first: cosines see only their
 * sum, sines only their difference. So are those as far before the quarter turn as after it, where
 * a number of samples is even: there a cosine of an even harmonic comes back and one of an odd
 * harmonic turns over, and a sine the other way about. A fast transform would ask for a power of
 * two of samples, which no pitch divides: every tooth would then jump in at another part of a step,
 * and the forces of equal teeth would not be alike.
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
    Folded[] byParity = {Folded.of(even, odd, n, 1), Folded.of(even, odd, n, -1)};
    double[] amplitudes = new double[upTo(n) + 1];
    for (int k = 0; k < amplitudes.length; k++) {
      double opposite = n % 2 == 0 ? samples[n / 2] * (k % 2 == 0 ? 1 : -1) : 0;
      double size = byParity[k % 2].size(k, samples[0] + opposite, turn);
      amplitudes[k] = (k == 0 ? 1 : 2) * size / n;
    }
    return amplitudes;
  }

  /**
   * Samples of half a turn folded about the quarter turn, for even harmonics or for odd ones.
   *
   * @param even what cosines see, by step from the start
   * @param odd what sines see
   */
  private record Folded(double[] even, double[] odd) {

    /** Folds; parity is 1 for even harmonics, -1 for odd ones. An odd number has no middle. */
    static Folded of(double[] even, double[] odd, int samples, int parity) {
      if (samples % 2 != 0) {
        return new Folded(even, odd);
      }
      int middle = samples / 2;
      double[] cosines = new double[samples / 4 + 1];
      double[] sines = new double[samples / 4 + 1];
      for (int j = 1; j < cosines.length; j++) {
        boolean alone = 2 * j == middle;
        cosines[j] = even[j] + (alone ? 0 : parity * even[middle - j]);
        sines[j] = odd[j] - (alone ? 0 : parity * odd[middle - j]);
      }
      return new Folded(cosines, sines);
    }

    /** Size of the sum of one harmonic, its steps at the start and opposite given. */
    double size(int harmonic, double start, Turn turn) {
      double re = start;
      double im = 0;
      int steps = turn.cos.length;
      int at = harmonic;
      for (int j = 1; j < even.length; j++) {
        re += even[j] * turn.cos[at];
        im += odd[j] * turn.sin[at];
        at += harmonic;
        if (at >= steps) {
          at -= steps;
        }
      }
      return Math.sqrt(re * re + im * im);
    }
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
