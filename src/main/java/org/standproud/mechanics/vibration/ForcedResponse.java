package org.standproud.mechanics.vibration;

import java.util.List;
import org.standproud.mechanics.OutsideValidity;
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

  /**
   * Computes the swing.
   *
   * @param input force and stock
   */
  public static ForcedResponse of(ForcedInput input) {
    return of(input, SwingGains.of(input), input.forceN());
  }

  /**
   * Computes the swing under another force as well, on the same stock at the same speed.
   *
   * @param input force and stock
   * @param otherForceN the other force, as many samples
   * @return the swing under the force of the input, then under the other
   * @throws OutsideValidity if the other force has another number of samples, or one out of range
   */
  public static List<ForcedResponse> ofBoth(ForcedInput input, double[] otherForceN) {
    OutsideValidity.within(
        "force samples", otherForceN.length, input.samples(), input.samples(), "");
    ForcedInput.withinReach(otherForceN);
    SwingGains gains = SwingGains.of(input);
    return List.of(of(input, gains, input.forceN()), of(input, gains, otherForceN));
  }

  private static ForcedResponse of(ForcedInput input, SwingGains gains, double[] forceN) {
    double[] amplitudes = TurnHarmonics.of(forceN);
    double likely = 0;
    double high = 0;
    int worst = 1;
    double worstHigh = 0;
    for (int k = 1; k < amplitudes.length; k++) {
      double swing = gains.high(k) * amplitudes[k];
      likely += gains.likely(k) * amplitudes[k];
      high += swing;
      if (swing > worstHigh) {
        worst = k;
        worstHigh = swing;
      }
    }
    double toothHz = input.teeth() * input.revPerS();
    double[] nearest = nearest(input.modes(), toothHz);
    return new ForcedResponse(
        new Band(0, likely, high),
        worst,
        worst * input.revPerS(),
        new Band(0, gains.likely(worst) * amplitudes[worst], worstHigh),
        (int) nearest[0],
        nearest[1],
        resonant(input.modes(), toothHz));
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
