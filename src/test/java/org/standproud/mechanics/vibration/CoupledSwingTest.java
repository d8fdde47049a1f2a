package org.standproud.mechanics.vibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The steady swing against one oscillator's closed form and against a simulation in time. */
class CoupledSwingTest {

  private static final int SAMPLES = 720;

  private static ModeSet mode(double hz, double zeta, double k) {
    return ModeSet.of(new double[] {hz}, new double[] {zeta}, new double[] {k});
  }

  @Test
  void oneHarmonicOnOneModeSwingsAsTheOscillatorDoes() {
    double[] force = new double[SAMPLES];
    for (int j = 0; j < SAMPLES; j++) {
      force[j] = 50 + 100 * Math.cos(2 * Math.PI * 4 * j / SAMPLES);
    }
    double r = 4 * 20 / 100.0;
    double gain = 1 / (1e6 * Math.hypot(1 - r * r, 2 * 0.05 * r));
    CoupledSwing swing =
        CoupledSwing.of(
            ForceHarmonics.of(force, 60), ModeSet.RIGID, 0, mode(100, 0.05, 1e6), 1e-6, 20);
    assertThat(swing.stockPeakM()).isCloseTo(100 * gain, Percentage.withPercentage(0.5));
    assertThat(swing.relativePeakM()).isCloseTo(100 * gain, Percentage.withPercentage(0.5));
    double lag = Math.atan2(2 * 0.05 * r, 1 - r * r);
    assertThat(swing.stockAtM(lag / 4)).isCloseTo(50e-6 + 100 * gain, within(1e-9));
  }

  @Test
  void cutterAndStockGiveWayToEachOther() {
    double[] force = new double[SAMPLES];
    Arrays.fill(force, 100);
    CoupledSwing swing =
        CoupledSwing.of(
            ForceHarmonics.of(force, 20),
            mode(500, 0.05, 2e6),
            1e-6,
            mode(300, 0.05, 1e6),
            1e-6,
            20);
    // The stock is pushed to +y', the cutter to -y': half a micrometre of rest beside its mode.
    assertThat(swing.stockAtM(0)).isCloseTo(100e-6, within(1e-12));
    assertThat(swing.relativeAtM(1)).isCloseTo(-200e-6, within(1e-12));
    assertThat(swing.overcutM(0, false)).isCloseTo(-200e-6, within(1e-12));
    assertThat(swing.overcutM(0, true)).isCloseTo(200e-6, within(1e-12));
    assertThat(swing.relativePeakM()).isCloseTo(0, within(1e-15));
  }

  @Test
  void belowTheLimitASimulationWithLossOfContactSettlesToTheSameSwing() {
    Random random = new Random(31);
    int apart = 0;
    for (int i = 0; i < 200; i++) {
      int teeth = 2 + random.nextInt(4);
      boolean up = random.nextBoolean();
      double arc = Math.toRadians(30 + 120 * random.nextDouble());
      double entry = up ? 0 : Math.PI - arc;
      double exit = up ? arc : Math.PI;
      ModeSet cutter = mode(500 + 800 * random.nextDouble(), 0.03, 2e7);
      ModeSet stock = mode(200 + 600 * random.nextDouble(), 0.03, 8e6);
      double speed = 5 + 20 * random.nextDouble();
      double kt = 1500e6;
      double kr = 0.3;
      double limit =
          CoupledCut.of(
                  ModeSet.RIGID, cutter, stock, DirectionalFactors.of(entry, exit, kr), kt, teeth)
              .least()
              .depthM();
      double depth = Math.min(2e-3, 0.3 * limit);
      double feed = 0.1e-3;
      int steps = (int) Math.max(100, Math.ceil(60 * 1300 / (speed * teeth)));
      MillingSimulation cut =
          new MillingSimulation(
              ModeSet.RIGID, cutter, stock, kt, kr, teeth, entry, exit, speed, steps);
      int settle = (int) Math.ceil(0.9 * speed * teeth) * steps + teeth * steps;
      for (int s = 0; s < settle; s++) {
        cut.advance(depth, feed);
      }
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      double mean = 0;
      double[] force = new double[teeth * steps];
      int start = settle % (teeth * steps);
      for (int s = 0; s < teeth * steps; s++) {
        cut.advance(depth, feed);
        force[(start + s) % force.length] = -cut.forceAcrossN;
        mean += cut.stockM() / (teeth * steps);
        least = Math.min(least, cut.stockM());
        most = Math.max(most, cut.stockM());
      }
      double[] nominal = new double[SAMPLES];
      for (int j = 0; j < SAMPLES; j++) {
        for (int tooth = 0; tooth < teeth; tooth++) {
          double phi = 2 * Math.PI * ((double) j / SAMPLES - (double) tooth / teeth);
          phi -= 2 * Math.PI * Math.floor(phi / (2 * Math.PI));
          if (phi >= entry && phi <= exit) {
            double ft = kt * depth * feed * Math.sin(phi);
            nominal[j] += -(ft * Math.sin(phi) - kr * ft * Math.cos(phi));
          }
        }
      }
      CoupledSwing swing =
          CoupledSwing.of(
              ForceHarmonics.of(nominal, 240),
              cutter,
              cutter.staticMPerN(),
              stock,
              stock.staticMPerN(),
              speed);
      double simulated = Math.max(most - mean, mean - least);
      apart += Math.abs(swing.stockPeakM() / simulated - 1) > 0.08 ? 1 : 0;
    }
    // The simulation holds its force over a step, by which near resonance it errs a little.
    assertThat(apart).as("of 200 cases, more than 8 %% apart").isLessThanOrEqualTo(10);
  }

  @Test
  void aStiffWallIsUndercutInClimbAndOvercutInConventionalMilling() {
    // Slow teeth on stiff members: the surface is made under the force of that moment.
    double kt = 1500e6;
    double feed = 0.1e-3;
    double depth = 1e-3;
    double[] climb = new double[SAMPLES];
    for (int j = 0; j < SAMPLES; j++) {
      double phi = 2 * Math.PI * j / SAMPLES;
      if (phi >= Math.PI / 2 && phi <= Math.PI) {
        // Edge force keeps a radial thrust on the wall at the exit.
        double ft = kt * depth * (feed * Math.sin(phi) + 0.01e-3);
        climb[j] = -(ft * Math.sin(phi) - 0.3 * ft * Math.cos(phi));
      }
    }
    CoupledSwing swing =
        CoupledSwing.of(ForceHarmonics.of(climb, 240), ModeSet.RIGID, 1e-7, ModeSet.RIGID, 1e-7, 1);
    // Force on the cutter at phi = pi is +0.3 Ft toward +y', away from the wall at -y'.
    assertThat(swing.overcutM(Math.PI - 0.02, true)).isNegative();
  }
}
