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
    Band stiffness = mode.stiffnessNPerM();
    Band damping = input.dampingRatio();
    double ratio = input.revPerS() / f.likely();
    double least = input.revPerS() / f.high();
    double greatest = input.revPerS() / f.low();
    double peak = Math.sqrt(1 - 2 * damping.low() * damping.low());
    for (int order = 1; order < likely.length; order++) {
      double worst = Math.max(order * least, Math.min(order * greatest, peak));
      likely[order] += gain(order * ratio, damping.likely(), stiffness.likely());
      high[order] += gain(worst, damping.low(), stiffness.low());
    }
  }

  private static double gain(double ratio, double zeta, double stiffnessNPerM) {
    double spring = 1 - ratio * ratio;
    double damper = 2 * zeta * ratio;
    return 1 / (stiffnessNPerM * Math.sqrt(spring * spring + damper * damper));
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
