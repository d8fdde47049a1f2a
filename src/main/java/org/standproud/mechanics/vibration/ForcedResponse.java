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
 * @param amplitudeM swing to one side from the mean, m
 * @param worstHarmonic the harmonic of the turn that swings most
 * @param worstHarmonicHz its frequency, Hz
 * @param worstAmplitudeM its share, m
 * @param nearestRatio the tooth-passing harmonic nearest to a likely natural frequency, over that
 *     frequency; 1 is resonance
 * @param resonant whether a tooth-passing harmonic lies in the band of a natural frequency
 */
public record ForcedResponse(
    Band amplitudeM,
    int worstHarmonic,
    double worstHarmonicHz,
    Band worstAmplitudeM,
    double nearestRatio,
    boolean resonant) {

  /** Harmonics of the turn that are taken, as far as the samples carry them. */
  private static final int MOST_HARMONICS = 240;

  /**
   * Computes the swing.
   *
   * @param input force and stock
   */
  public static ForcedResponse of(ForcedInput input) {
    double[] amplitudes = harmonicsN(input.forceN());
    double low = 0;
    double likely = 0;
    double high = 0;
    int worst = 1;
    Band worstBand = Band.exactly(0);
    for (int k = 1; k < amplitudes.length; k++) {
      Band swing = swingPerN(input, k * input.revPerS()).times(amplitudes[k]);
      low += swing.low();
      likely += swing.likely();
      high += swing.high();
      if (swing.high() > worstBand.high()) {
        worst = k;
        worstBand = swing;
      }
    }
    double toothHz = input.teeth() * input.revPerS();
    return new ForcedResponse(
        new Band(low, likely, high),
        worst,
        worst * input.revPerS(),
        worstBand,
        nearestRatio(input.modes(), toothHz),
        input.modes().stream().anyMatch(m -> holdsHarmonic(m.frequencyHz(), toothHz)));
  }

  /**
   * Amplitudes of the Fourier series of equally spaced samples over one period; index 0 is the
   * mean.
   *
   * @param samples the samples
   */
  static double[] harmonicsN(double[] samples) {
    int n = samples.length;
    double[] cos = new double[n];
    for (int j = 0; j < n; j++) {
      cos[j] = Math.cos(2 * Math.PI * j / n);
    }
    double[] sin = new double[n];
    for (int j = 0; j < n; j++) {
      sin[j] = Math.sin(2 * Math.PI * j / n);
    }
    double[] amplitudes = new double[Math.min(MOST_HARMONICS, (n - 1) / 2) + 1];
    for (int k = 0; k < amplitudes.length; k++) {
      double re = 0;
      double im = 0;
      int at = 0;
      for (double sample : samples) {
        re += sample * cos[at];
        im += sample * sin[at];
        at = (at + k) % n;
      }
      amplitudes[k] = (k == 0 ? 1 : 2) * Math.hypot(re, im) / n;
    }
    return amplitudes;
  }

  private static Band swingPerN(ForcedInput input, double hz) {
    Band damping = input.dampingRatio();
    double low = Double.POSITIVE_INFINITY;
    double likely = 0;
    double high = 0;
    double modalLow = 0;
    double modalLikely = 0;
    double modalHigh = 0;
    for (ModeBand mode : input.modes()) {
      Band f = mode.frequencyHz();
      Band k = mode.stiffnessNPerM();
      likely += gain(hz / f.likely(), damping.likely()) / k.likely();
      high += worstGain(hz / f.high(), hz / f.low(), damping.low()) / k.low();
      double least =
          Math.min(gain(hz / f.low(), damping.high()), gain(hz / f.high(), damping.high()));
      // Modes may work against each other; the least sure swing is that of none.
      low = input.modes().size() == 1 ? least / k.high() : 0;
      modalLow += 1 / k.high();
      modalLikely += 1 / k.likely();
      modalHigh += 1 / k.low();
    }
    likely += Math.max(0, input.flexibilityMPerN().likely() - modalLikely);
    high += Math.max(0, input.flexibilityMPerN().high() - Math.min(modalLow, modalHigh));
    return new Band(Math.min(low, likely), likely, Math.max(high, likely));
  }

  private static double gain(double ratio, double zeta) {
    return 1 / Math.hypot(1 - ratio * ratio, 2 * zeta * ratio);
  }

  private static double worstGain(double least, double greatest, double zeta) {
    double peak = Math.sqrt(1 - 2 * zeta * zeta);
    return gain(Math.max(least, Math.min(greatest, peak)), zeta);
  }

  private static double nearestRatio(List<ModeBand> modes, double toothHz) {
    double nearest = 0;
    for (ModeBand mode : modes) {
      double natural = mode.likely().frequencyHz();
      double below = Math.max(1, Math.floor(natural / toothHz));
      for (double k = below; k <= below + 1; k++) {
        double ratio = k * toothHz / natural;
        if (nearest == 0 || Math.abs(Math.log(ratio)) < Math.abs(Math.log(nearest))) {
          nearest = ratio;
        }
      }
    }
    return nearest;
  }

  private static boolean holdsHarmonic(Band naturalHz, double toothHz) {
    double first = Math.max(1, Math.ceil(naturalHz.low() / toothHz));
    return first * toothHz <= naturalHz.high();
  }
}
