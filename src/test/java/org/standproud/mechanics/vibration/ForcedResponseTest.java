package org.standproud.mechanics.vibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

class ForcedResponseTest {

  private static final double K = 2e6;

  private static double[] cosine(int harmonic, double meanN, double amplitudeN) {
    double[] force = new double[360];
    for (int i = 0; i < force.length; i++) {
      force[i] = meanN + amplitudeN * Math.cos(2 * Math.PI * harmonic * i / force.length);
    }
    return force;
  }

  private static ModeBand mode(double low, double likely, double high) {
    return new ModeBand(new Mode(low, K), new Mode(likely, K), new Mode(high, K));
  }

  private static ForcedResponse swing(
      double[] force, double revPerS, int teeth, ModeBand mode, Band damping) {
    return ForcedResponse.of(
        new ForcedInput(force, revPerS, teeth, List.of(mode), Band.exactly(1 / K), damping));
  }

  /** One-degree oscillator under a harmonic force (textbook closed form, from memory). */
  @Test
  void aSlowForceBendsAndAResonantOneIsMagnified() {
    Band damping = Band.exactly(0.02);
    ModeBand mode = mode(500, 500, 500);
    assertThat(swing(cosine(4, 300, 100), 1, 4, mode, damping).amplitudeM().likely())
        .isCloseTo(100 / K, Percentage.withPercentage(0.1));
    assertThat(swing(cosine(4, 300, 100), 125, 4, mode, damping).amplitudeM().likely())
        .isCloseTo(100 / K / 0.04, Percentage.withPercentage(0.1));
    double far = 100 / K / Math.hypot(1 - 4, 2 * 0.02 * 2);
    assertThat(swing(cosine(4, 300, 100), 250, 4, mode, damping).amplitudeM().likely())
        .isCloseTo(far, Percentage.withPercentage(0.1));
  }

  @Test
  void resonanceAnywhereInTheBandIsTakenAsResonance() {
    ForcedResponse response =
        swing(cosine(4, 0, 100), 110, 4, mode(400, 500, 600), StabilityInput.USUAL_DAMPING);
    double worst = 100 / K / (2 * 0.01 * Math.sqrt(1 - 1e-4));
    assertThat(response.amplitudeM().high()).isCloseTo(worst, Percentage.withPercentage(0.1));
    assertThat(response.amplitudeM().likely()).isLessThan(worst / 5);
    assertThat(response.resonantToothHarmonic()).isEqualTo(1);
    assertThat(response.worstHarmonic()).isEqualTo(4);
    assertThat(response.worstHarmonicHz()).isCloseTo(440, within(1e-9));
    assertThat(response.nearestToothHarmonic()).isEqualTo(1);
    assertThat(response.nearestRatio()).isCloseTo(0.88, within(1e-9));
  }

  @Test
  void aToothFrequencyAboveEveryModeIsNotResonant() {
    ForcedResponse response =
        swing(cosine(2, 0, 100), 400, 2, mode(400, 500, 600), StabilityInput.USUAL_DAMPING);
    assertThat(response.resonantToothHarmonic()).isZero();
    assertThat(response.nearestRatio()).isCloseTo(1.6, within(1e-9));
  }

  @Test
  void theSecondToothHarmonicCanBeTheOneThatRings() {
    ForcedResponse response =
        swing(cosine(8, 0, 100), 62.5, 4, mode(500, 500, 500), Band.exactly(0.02));
    assertThat(response.nearestToothHarmonic()).isEqualTo(2);
    assertThat(response.nearestRatio()).isCloseTo(1, within(1e-9));
    assertThat(response.worstHarmonic()).isEqualTo(8);
  }

  /** Parseval: the mean square of the samples is that of the series (identity). */
  @Property(tries = 50)
  void theSeriesHoldsAllOfTheForce(
      @ForAll @IntRange(min = 1, max = 20) int harmonic,
      @ForAll @DoubleRange(min = -500, max = 500) double mean,
      @ForAll @DoubleRange(min = 0, max = 500) double amplitude) {
    double[] series = TurnHarmonics.of(cosine(harmonic, mean, amplitude));
    assertThat(series[0]).isCloseTo(Math.abs(mean), within(1e-8));
    assertThat(series[harmonic]).isCloseTo(amplitude, within(1e-8));
    assertThat(series[harmonic + 1]).isCloseTo(0, within(1e-8));
  }

  @Property(tries = 100)
  void theSwingIsFiniteInOrderAndKnowsNoSide(
      @ForAll @DoubleRange(min = 0.05, max = 1000) double revPerS,
      @ForAll @IntRange(min = 1, max = 20) int teeth,
      @ForAll @DoubleRange(min = 50, max = 5000) double hz) {
    double[] blow = new double[360];
    double[] otherSide = new double[360];
    for (int i = 0; i < 40; i++) {
      blow[i] = 400;
      otherSide[i] = -400;
    }
    ModeBand mode = mode(0.8 * hz, hz, 1.2 * hz);
    ForcedResponse one = swing(blow, revPerS, teeth, mode, StabilityInput.USUAL_DAMPING);
    ForcedResponse other = swing(otherSide, revPerS, teeth, mode, StabilityInput.USUAL_DAMPING);
    assertThat(one.amplitudeM()).isEqualTo(other.amplitudeM());
    assertThat(one.amplitudeM().high()).isLessThanOrEqualTo(240 * 400 / K / 0.02);
    assertThat(one.nearestRatio()).isPositive().isFinite();
  }

  @Test
  void aForceThatIsNotANumberIsRefused() {
    double[] force = cosine(1, 0, 1);
    force[7] = Double.NaN;
    assertThatThrownBy(() -> swing(force, 10, 4, mode(1, 2, 3), Band.exactly(0.02)))
        .isInstanceOf(OutsideValidity.class);
  }
}
