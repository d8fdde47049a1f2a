package org.standproud.mechanics.vibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.standproud.setup.Band;

/** The vibration of many draws against closed forms and against the models it stands for. */
class DrawnVibrationTest {

  private static final double K = 1e6;

  private static double[] cosine(int harmonic, double amplitudeN) {
    double[] force = new double[360];
    for (int i = 0; i < force.length; i++) {
      force[i] = 300 + amplitudeN * Math.cos(2 * Math.PI * harmonic * i / force.length);
    }
    return force;
  }

  private static double swing(double[] force, double revPerS, double damping) {
    return SteadySwing.amplitudeM(
        force, revPerS, new double[] {500}, new double[] {K}, 1, new double[] {damping}, 1 / K);
  }

  /** One-degree oscillator under a harmonic force (textbook closed form, from memory). */
  @Test
  void aSlowForceBendsAndAResonantOneIsMagnified() {
    assertThat(swing(cosine(4, 100), 1, .02)).isCloseTo(100 / K, withinPercentage(.1));
    assertThat(swing(cosine(4, 100), 125, .02)).isCloseTo(100 / K / .04, withinPercentage(.2));
    assertThat(swing(cosine(4, 100), 250, .02))
        .isCloseTo(100 / K / Math.hypot(1 - 4, 2 * .02 * 2), withinPercentage(.3));
  }

  /** The sum of the sizes of all harmonics is never less than the true peak. */
  @Test
  void phasesCanOnlyMakeTheSwingLessThanAllHarmonicsTogether() {
    Well19937c random = new Well19937c(11);
    for (int i = 0; i < 30; i++) {
      double[] force = new double[120];
      int teeth = 4;
      for (int k = 0; k < force.length; k++) {
        force[k] = k % 30 < 10 ? 200 * Math.sin(Math.PI * (k % 30) / 10) : 0;
      }
      double revPerS = 5 + 30 * random.nextDouble();
      double hz = 100 + 400 * random.nextDouble();
      ModeBand mode = new ModeBand(new Mode(hz, K), new Mode(hz, K), new Mode(hz, K));
      Band damping = Band.exactly(.03);
      double sum =
          ForcedResponse.of(
                  new ForcedInput(
                      force, revPerS, teeth, List.of(mode), Band.exactly(1 / K), damping))
              .amplitudeM()
              .likely();
      double peak =
          SteadySwing.amplitudeM(
              force, revPerS, new double[] {hz}, new double[] {K}, 1, new double[] {.03}, 1 / K);
      assertThat(peak).isPositive().isLessThanOrEqualTo(1.02 * sum);
    }
  }

  @Test
  void theQuickChatterDepthIsThatOfTheLobes() {
    Well19937c random = new Well19937c(5);
    List<Double> off = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      double first = 80 + 400 * random.nextDouble();
      double[] hz = {first, first * (1.8 + random.nextDouble()), first * 4};
      double[] stiffness = {2e5, 4e5, 3e6};
      double damping = .01 + .04 * random.nextDouble();
      double entry = random.nextDouble();
      double exit = entry + .5 + (Math.PI - entry - .5) * random.nextDouble();
      DirectionalFactors factors =
          DirectionalFactors.of(entry, exit, .2 + .5 * random.nextDouble());
      double revPerS = 2 + 20 * random.nextDouble();
      List<DampedMode> modes = new ArrayList<>();
      for (int m = 0; m < hz.length; m++) {
        modes.add(new DampedMode(hz[m], damping, stiffness[m]));
      }
      double lobes = StabilityLobes.milling(List.of(), modes, factors, 2e9, 6).depthAtM(revPerS);
      CoupledDepth alone = new CoupledDepth(hz.length);
      for (int m = 0; m < hz.length; m++) {
        alone.stock(hz[m], damping, stiffness[m]);
      }
      double quick = alone.at(factors, 2e9, 6, revPerS).depthM();
      if (lobes < StabilityLobes.CAP_M) {
        off.add(Math.abs(quick / lobes - 1));
      }
    }
    double[] sorted = off.stream().mapToDouble(d -> d).sorted().toArray();
    assertThat(sorted.length).isGreaterThan(100);
    assertThat(sorted[sorted.length / 2]).isLessThan(.02);
    assertThat(sorted[sorted.length * 95 / 100]).isLessThan(.15);
  }

  @Test
  void theQuickAngleIsTrueToAHundredThousandth() {
    for (double angle = -3.14; angle < 3.14; angle += .01) {
      assertThat(CoupledDepth.atan2(Math.sin(angle), Math.cos(angle)))
          .isCloseTo(angle, within(1.2e-5));
    }
  }
}
