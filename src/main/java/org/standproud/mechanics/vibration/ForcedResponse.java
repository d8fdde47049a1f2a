package org.standproud.mechanics.vibration;

import java.util.List;
import org.standproud.setup.Band;

/**
 * How far the stock swings under the blows of the teeth.
 *
 * <p>The force is split into its Fourier series over a turn; the mean is left to statics. Harmonic
 * k of amplitude F swings mode i by {@code F/k_i / sqrt((1-r^2)^2 + (2 zeta r)^2)}, {@code r = k
 * n/f_i}. Where a natural frequency is only known as a band, the worst of the band is taken: {@code
 * 1/(2 zeta sqrt(1 - zeta^2))} when resonance lies inside it (one-degree oscillator; any textbook
 * of vibration, for instance Den Hartog, Mechanical Vibrations, from memory). Harmonics and modes
 * are added as if all peaked together: the true peak is never greater.
 *
 * <p>Modes and harmonics may also work against each other, so the least swing that is sure is none.
 *
 * @param amplitudeM swing to one side from the mean, m
 * @param worstHarmonic the harmonic of the turn that swings most
 * @param worstHarmonicHz its frequency, Hz
 * @param worstAmplitudeM its share, m
 * @param nearestToothHarmonic the tooth-passing harmonic nearest to a likely natural frequency
 * @param nearestRatio its frequency over that natural frequency; 1 is resonance
 * @param resonantToothHarmonic the lowest tooth-passing harmonic that lies in the band of a natural
 *     frequency; 0 if none does. The higher it is, the weaker the blow
 */
public record ForcedResponse(
    Band amplitudeM,
    int worstHarmonic,
    double worstHarmonicHz,
    Band worstAmplitudeM,
    int nearestToothHarmonic,
    double nearestRatio,
    int resonantToothHarmonic) {

  /** Harmonics of the turn that are taken, as far as the samples carry them. */
  private static final int MOST_HARMONICS = 240;

  /**
   * Computes the swing.
   *
   * @param input force and stock
   */
  public static ForcedResponse of(ForcedInput input) {
    double[] amplitudes = harmonicsN(input.forceN());
    double likely = 0;
    double high = 0;
    int worst = 1;
    Band worstBand = Band.exactly(0);
    for (int k = 1; k < amplitudes.length; k++) {
      Band swing = swingPerN(input, k * input.revPerS()).times(amplitudes[k]);
      likely += swing.likely();
      high += swing.high();
      if (swing.high() > worstBand.high()) {
        worst = k;
        worstBand = swing;
      }
    }
    double toothHz = input.teeth() * input.revPerS();
    double[] nearest = nearest(input.modes(), toothHz);
    return new ForcedResponse(
        new Band(0, likely, high),
        worst,
        worst * input.revPerS(),
        worstBand,
        (int) nearest[0],
        nearest[1],
        resonant(input.modes(), toothHz));
  }

  /**
   * Amplitudes of the Fourier series of equally spaced samples over one period; index 0 is the
   * mean. Samples as far before the start as after it are folded together first: cosines see only
   * their sum, sines only their difference.
   *
   * @param samples the samples
   */
  static double[] harmonicsN(double[] samples) {
    int n = samples.length;
    int half = (n - 1) / 2;
    double[] cos = new double[n];
    double[] sin = new double[n];
    double[] even = new double[half + 1];
    double[] odd = new double[half + 1];
    for (int j = 0; j < n; j++) {
      cos[j] = Math.cos(2 * Math.PI * j / n);
      sin[j] = Math.sin(2 * Math.PI * j / n);
    }
    for (int j = 1; j <= half; j++) {
      even[j] = samples[j] + samples[n - j];
      odd[j] = samples[j] - samples[n - j];
    }
    double[] amplitudes = new double[Math.min(MOST_HARMONICS, half) + 1];
    for (int k = 0; k < amplitudes.length; k++) {
      double opposite = n % 2 == 0 ? samples[n / 2] * (k % 2 == 0 ? 1 : -1) : 0;
      double re = samples[0] + opposite;
      double im = 0;
      int at = k;
      for (int j = 1; j <= half; j++) {
        re += even[j] * cos[at];
        im += odd[j] * sin[at];
        at += k;
        if (at >= n) {
          at -= n;
        }
      }
      amplitudes[k] = (k == 0 ? 1 : 2) * Math.hypot(re, im) / n;
    }
    return amplitudes;
  }

  private static Band swingPerN(ForcedInput input, double hz) {
    Band damping = input.dampingRatio();
    double likely = 0;
    double high = 0;
    double modalLikely = 0;
    double modalHigh = 0;
    for (ModeBand mode : input.modes()) {
      Band f = mode.frequencyHz();
      Band k = mode.stiffnessNPerM();
      likely += gain(hz / f.likely(), damping.likely()) / k.likely();
      high += worstGain(hz / f.high(), hz / f.low(), damping.low()) / k.low();
      modalLikely += 1 / k.likely();
      modalHigh += 1 / k.low();
    }
    likely += Math.max(0, input.flexibilityMPerN().likely() - modalLikely);
    high += Math.max(0, input.flexibilityMPerN().high() - modalHigh);
    return new Band(0, likely, Math.max(high, likely));
  }

  private static double gain(double ratio, double zeta) {
    double spring = 1 - ratio * ratio;
    double damper = 2 * zeta * ratio;
    return 1 / Math.sqrt(spring * spring + damper * damper);
  }

  private static double worstGain(double least, double greatest, double zeta) {
    double peak = Math.sqrt(1 - 2 * zeta * zeta);
    return gain(Math.max(least, Math.min(greatest, peak)), zeta);
  }

  /** The tooth-passing harmonic nearest to any likely natural frequency, and the ratio of both. */
  private static double[] nearest(List<ModeBand> modes, double toothHz) {
    double[] nearest = {1, toothHz / modes.get(0).likely().frequencyHz()};
    for (ModeBand mode : modes) {
      double natural = mode.likely().frequencyHz();
      double below = Math.max(1, Math.floor(natural / toothHz));
      for (double k = below; k <= below + 1; k++) {
        double ratio = k * toothHz / natural;
        if (Math.abs(Math.log(ratio)) < Math.abs(Math.log(nearest[1]))) {
          nearest = new double[] {k, ratio};
        }
      }
    }
    return nearest;
  }

  /** The lowest tooth-passing harmonic inside the band of a natural frequency, 0 if none is. */
  private static int resonant(List<ModeBand> modes, double toothHz) {
    double lowest = 0;
    for (ModeBand mode : modes) {
      double first = Math.max(1, Math.ceil(mode.frequencyHz().low() / toothHz));
      boolean inside = first * toothHz <= mode.frequencyHz().high();
      if (inside && (lowest == 0 || first < lowest)) {
        lowest = first;
      }
    }
    return (int) Math.min(lowest, Integer.MAX_VALUE);
  }
}
