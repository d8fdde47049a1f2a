package org.standproud.mechanics.vibration;

import org.standproud.setup.Band;

/**
 * How far the stock swings for one newton at each harmonic of the turn; formulas in {@link
 * ForcedResponse}.
 */
final class SwingGains {

  private final double[] likely;
  private final double[] high;

  private SwingGains(double[] likely, double[] high) {
    this.likely = likely;
    this.high = high;
  }

  /** The gains of a stock at a speed; the size of the force does not matter. */
  static SwingGains of(ForcedInput input) {
    int harmonics = TurnHarmonics.upTo(input.samples());
    double[] likely = new double[harmonics + 1];
    double[] high = new double[harmonics + 1];
    double modalLikely = 0;
    double modalHigh = 0;
    for (ModeBand mode : input.modes()) {
      addMode(mode, input, likely, high);
      Band stiffness = mode.stiffnessNPerM();
      modalLikely += 1 / stiffness.likely();
      modalHigh += 1 / stiffness.low();
    }
    double restLikely = Math.max(0, input.flexibilityMPerN().likely() - modalLikely);
    double restHigh = Math.max(0, input.flexibilityMPerN().high() - modalHigh);
    for (int k = 1; k <= harmonics; k++) {
      likely[k] += restLikely;
      high[k] = Math.max(high[k] + restHigh, likely[k]);
    }
    return new SwingGains(likely, high);
  }

  private static void addMode(ModeBand mode, ForcedInput input, double[] likely, double[] high) {
    Band f = mode.frequencyHz();
    Band k = mode.stiffnessNPerM();
    Band damping = input.dampingRatio();
    for (int order = 1; order < likely.length; order++) {
      double hz = order * input.revPerS();
      likely[order] += gain(hz / f.likely(), damping.likely()) / k.likely();
      high[order] += worstGain(hz / f.high(), hz / f.low(), damping.low()) / k.low();
    }
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

  /** Likely swing in m/N at a harmonic of the turn. */
  double likely(int harmonic) {
    return likely[harmonic];
  }

  /** Greatest swing in m/N at a harmonic of the turn, never below the likely one. */
  double high(int harmonic) {
    return high[harmonic];
  }
}
