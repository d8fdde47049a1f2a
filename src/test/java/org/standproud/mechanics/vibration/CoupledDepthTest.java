package org.standproud.mechanics.vibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;

/** The quick limit of two members against {@link CoupledCut} and against one member alone. */
class CoupledDepthTest {

  private static final double KT_PA = 2e9;
  private static final int TEETH = 4;

  private static double[] modes(Well19937c random, int count, double hz, double stiffness) {
    double[] all = new double[2 * count];
    for (int m = 0; m < count; m++) {
      all[m] = hz * (m + 1) * (.7 + .6 * random.nextDouble());
      all[count + m] = stiffness * Math.pow(3, m) * (.5 + random.nextDouble());
    }
    return all;
  }

  private static ModeSet set(double[] all, double damping) {
    return ModeSet.of(list(all, damping));
  }

  private static List<DampedMode> list(double[] all, double damping) {
    int n = all.length / 2;
    return IntStream.range(0, n)
        .mapToObj(m -> new DampedMode(all[m], damping, all[n + m]))
        .toList();
  }

  private static CoupledDepth of(double[] cutter, double zetaC, double[] stock, double zetaS) {
    CoupledDepth depth = new CoupledDepth(12);
    depth.clear();
    for (int m = 0; m < cutter.length / 2; m++) {
      depth.cutter(cutter[m], zetaC, cutter[cutter.length / 2 + m]);
    }
    for (int m = 0; m < stock.length / 2; m++) {
      depth.stock(stock[m], zetaS, stock[stock.length / 2 + m]);
    }
    return depth;
  }

  private static DirectionalFactors factors(Well19937c random) {
    double entry = 2 * random.nextDouble();
    return DirectionalFactors.of(entry, entry + .6 + .5 * random.nextDouble(), .4);
  }

  @Test
  void itIsTheLimitOfTheCoupledCut() {
    Well19937c random = new Well19937c(23);
    int close = 0;
    double mean = 0;
    for (int i = 0; i < 300; i++) {
      double[] cutter = modes(random, 3, 500, 2e7);
      double[] stock = modes(random, 6, 800, 3e7 * Math.pow(10, random.nextDouble() - .5));
      double zetaC = .015 + .07 * random.nextDouble();
      double zetaS = .01 + .04 * random.nextDouble();
      DirectionalFactors factors = factors(random);
      double speed = 5 + 60 * random.nextDouble();
      double quick = of(cutter, zetaC, stock, zetaS).at(factors, KT_PA, TEETH, speed).depthM();
      double whole =
          CoupledCut.of(
                  set(cutter, zetaC), set(cutter, zetaC), set(stock, zetaS), factors, KT_PA, TEETH)
              .at(speed)
              .depthM();
      double ratio = quick / whole;
      close += ratio > .85 && ratio < 1.15 ? 1 : 0;
      mean += Math.log(ratio) / 300;
      assertThat(ratio).isBetween(.6, 1.6);
    }
    assertThat(close).isGreaterThanOrEqualTo(285);
    assertThat(mean).isCloseTo(0, within(.02));
  }

  @Test
  void aRigidCutterLeavesTheLimitOfTheStock() {
    Well19937c random = new Well19937c(29);
    for (int i = 0; i < 100; i++) {
      double[] stock = modes(random, 6, 700, 2e7);
      double[] cutter = {900, 1e14};
      DirectionalFactors factors = factors(random);
      double speed = 5 + 60 * random.nextDouble();
      CoupledDepth depth = of(cutter, .03, stock, .03);
      double alone =
          StabilityLobes.milling(List.of(), list(stock, .03), factors, KT_PA, TEETH)
              .depthAtM(speed);
      CoupledDepth.Limit limit = depth.at(factors, KT_PA, TEETH, speed);
      assertThat(limit.depthM()).isCloseTo(alone, withinPercentage(12));
      if (alone < StabilityLobes.CAP_M) {
        assertThat(limit.stockShare()).isCloseTo(1, within(.02));
      }
    }
  }

  @Test
  void aSofterMemberNeverRaisesTheLeastLimit() {
    double[] stock = {700, 1500, 3e7, 8e7};
    DirectionalFactors factors = DirectionalFactors.of(.3, 1.4, .4);
    double before = Double.POSITIVE_INFINITY;
    double share = 1;
    for (double k = 1e10; k > 3e6; k /= 3) {
      double least = Double.POSITIVE_INFINITY;
      CoupledDepth depth = of(new double[] {450, k}, .03, stock, .03);
      for (double speed = 5; speed < 12; speed += .05) {
        CoupledDepth.Limit found = depth.at(factors, KT_PA, TEETH, speed);
        if (found.depthM() < least) {
          least = found.depthM();
          share = found.stockShare();
        }
      }
      assertThat(least).isLessThan(before * 1.03);
      before = least;
    }
    assertThat(share).isLessThan(.2);
  }
}
