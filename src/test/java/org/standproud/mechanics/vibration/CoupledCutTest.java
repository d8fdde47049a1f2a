package org.standproud.mechanics.vibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.ComputationTest;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;

/** Limits of coupled members against closed forms, the chart of one member, and time. */
@ComputationTest
class CoupledCutTest {

  private static final PublishedTable ONE_MODE =
      new PublishedTable(
          Subject.VIBRATION,
          "Altintas and Budak, CIRP Annals 44/1 (1995): 2 pi 4 k z (1 +- z)/(N Kt |a|), one flexible direction",
          SourceTag.DERIVED);

  private static final double KT = 1500e6;

  private static DirectionalFactors arc(double from, double to, double kr) {
    return DirectionalFactors.of(Math.toRadians(from), Math.toRadians(to), kr);
  }

  private static ModeSet mode(double hz, double zeta, double k) {
    return ModeSet.of(new double[] {hz}, new double[] {zeta}, new double[] {k});
  }

  @Test
  @Tag(PublishedTable.TESTS)
  void oneFlexibleDirectionHasTheClosedForm() {
    ModeSet m = mode(400, 0.02, 5e6);
    Object[][] rows = {
      {"slot", 0., 180., .45333, .45333},
      {"half up", 0., 90., .29041, .77635},
      {"half down", 90., 180., .77635, .29041}
    };
    for (Object[] row : rows) {
      DirectionalFactors f = arc((double) row[1], (double) row[2], 0.3);
      ONE_MODE
          .row("Kt 1500 Kr .3 N 4, " + row[0])
          .percent(
              "limit, cutter along",
              "mm",
              (double) row[3],
              1e3 * CoupledCut.of(m, ModeSet.RIGID, ModeSet.RIGID, f, KT, 4).least().depthM(),
              0.2)
          .percent(
              "limit, stock across",
              "mm",
              (double) row[4],
              1e3 * CoupledCut.of(ModeSet.RIGID, ModeSet.RIGID, m, f, KT, 4).least().depthM(),
              0.2);
    }
  }

  @Test
  void theCoarseGridAgreesWithTheChart() {
    Random random = new Random(21);
    int far = 0;
    for (int i = 0; i < 300; i++) {
      ModeSet x = random(random, 1 + random.nextInt(2));
      ModeSet y = random(random, 1 + random.nextInt(2));
      ModeSet stock = random(random, 1 + random.nextInt(3));
      double from = random.nextBoolean() ? 0 : 60 + 60 * random.nextDouble();
      DirectionalFactors f = arc(from, from == 0 ? 40 + 140 * random.nextDouble() : 180, 0.3);
      double speed = 5 + 60 * random.nextDouble();
      List<DampedMode> across = new ArrayList<>(list(y));
      across.addAll(list(stock));
      StabilityLobes chart = StabilityLobes.milling(list(x), across, f, KT, 4);
      CoupledCut cut = CoupledCut.of(x, y, stock, f, KT, 4);
      assertThat(cut.least().depthM())
          .as("least %d", i)
          .isCloseTo(chart.leastDepthM(), Percentage.withPercentage(1.5));
      double there = chart.depthAtM(speed);
      far += Math.abs(cut.at(speed).depthM() / there - 1) > 0.08 ? 1 : 0;
    }
    assertThat(far).as("limits at a speed that differ by more than 8 %%").isLessThanOrEqualTo(9);
  }

  @Test
  void theSharesNameTheSofterMember() {
    DirectionalFactors f = arc(90, 180, 0.3);
    ModeSet soft = mode(500, 0.03, 3e6);
    ModeSet stiff = mode(800, 0.03, 60e6);
    assertThat(CoupledCut.of(stiff, stiff, soft, f, KT, 4).at(20).stockShare()).isGreaterThan(0.8);
    CoupledCut.Limit cutter = CoupledCut.of(soft, soft, stiff, f, KT, 4).at(20);
    assertThat(cutter.cutterIsSofter()).isTrue();
    assertThat(cutter.stockShare()).isLessThan(0.2);
    assertThat(CoupledCut.of(ModeSet.RIGID, ModeSet.RIGID, soft, f, KT, 4).at(20).stockShare())
        .isCloseTo(1, within(1e-9));
    assertThat(CoupledCut.of(ModeSet.RIGID, soft, soft, f, KT, 4).at(20).stockShare())
        .isCloseTo(0.5, within(1e-9));
  }

  @Test
  void aSecondMemberThatGivesHalvesTheLimitIfItIsTheSame() {
    DirectionalFactors f = arc(90, 180, 0.3);
    ModeSet m = mode(500, 0.03, 3e6);
    double alone = CoupledCut.of(ModeSet.RIGID, ModeSet.RIGID, m, f, KT, 4).least().depthM();
    double both = CoupledCut.of(ModeSet.RIGID, m, m, f, KT, 4).least().depthM();
    assertThat(both).isCloseTo(alone / 2, Percentage.withPercentage(0.01));
  }

  @Test
  void aSimulationInTimeChattersAboveTheLimitAndNotBelow() {
    Random random = new Random(22);
    int wrong = 0;
    int cases = Integer.getInteger("test.simulations", 200);
    for (int i = 0; i < cases; i++) {
      int teeth = 3 + random.nextInt(4);
      // At least one tooth in cut on average: there the mean force is nearly everything.
      double arc = Math.max(75, 360.0 / teeth) + 60 * random.nextDouble();
      boolean up = random.nextBoolean();
      double entry = Math.toRadians(up ? 0 : 180 - Math.min(180, arc));
      double exit = Math.toRadians(up ? Math.min(180, arc) : 180);
      double kr = 0.2 + 0.3 * random.nextDouble();
      ModeSet x = random(random, 1);
      ModeSet y = random(random, 1);
      ModeSet stock = random(random, 2);
      double speed = (4 + 30 * random.nextDouble()) * 4 / teeth;
      CoupledCut.Limit limit =
          CoupledCut.of(x, y, stock, DirectionalFactors.of(entry, exit, kr), KT, teeth).at(speed);
      boolean below =
          MillingSimulation.growth(
                  new MillingSimulation(
                      x, y, stock, KT, kr, teeth, entry, exit, speed, steps(speed, teeth)),
                  0.75 * limit.depthM(),
                  passes(speed, teeth))
              < 1;
      boolean above =
          MillingSimulation.growth(
                  new MillingSimulation(
                      x, y, stock, KT, kr, teeth, entry, exit, speed, steps(speed, teeth)),
                  1.35 * limit.depthM(),
                  passes(speed, teeth))
              > 1;
      wrong += below && above ? 0 : 1;
    }
    assertThat(wrong).as("of %d cases", cases).isLessThanOrEqualTo(cases * 8 / 100);
  }

  private static int steps(double speed, int teeth) {
    return (int) Math.max(60, Math.ceil(30 * 1500 / (speed * teeth)));
  }

  private static int passes(double speed, int teeth) {
    return (int) Math.max(160, 0.35 * speed * teeth);
  }

  @Test
  void rubbingFlanksRaiseTheLimitMostAtLowSpeed() {
    DirectionalFactors f = arc(90, 180, 0.3);
    CoupledCut cut = CoupledCut.of(ModeSet.RIGID, ModeSet.RIGID, mode(800, 0.02, 8e6), f, KT, 4);
    double radius = 0.01;
    double last = Double.POSITIVE_INFINITY;
    for (double speed : new double[] {3, 6, 12, 24}) {
      FlankDamping flank = new FlankDamping(1e14, 80e-6, 2 * Math.PI * radius * speed);
      double without = cut.least().depthM();
      double with =
          cut.at(speed, flank, KT, Math.PI / 2, Math.PI).depthM()
              / Math.max(without, cut.at(speed).depthM());
      assertThat(with).isGreaterThanOrEqualTo(1);
      assertThat(with).isLessThanOrEqualTo(last * 1.02);
      last = with;
    }
    assertThat(last).isLessThan(1.6);
  }

  @Test
  void theFlankDamperIsTheWorkOfItsIndentation() {
    // Work over one wave, integrated step by step, against pi c omega A^2.
    double k = 1e14;
    double land = 60e-6;
    double speed = 0.5;
    double hz = 600;
    double size = 1e-6;
    double omega = 2 * Math.PI * hz;
    int steps = 20000;
    double work = 0;
    for (int i = 0; i < steps; i++) {
      double t = (i + 0.5) / (steps * hz);
      double volume = 0;
      int parts = 50;
      for (int j = 0; j < parts; j++) {
        double back = land * (j + 0.5) / parts;
        double depth = size * (Math.sin(omega * (t - back / speed)) - Math.sin(omega * t));
        volume += depth * land / parts;
      }
      if (Math.cos(omega * t) < 0) {
        work -= k * volume * size * omega * Math.cos(omega * t) / (steps * hz);
      }
    }
    double c = new FlankDamping(k, land, speed).newtonSecondsPerM2(hz);
    assertThat(work / (Math.PI * omega * size * size)).isCloseTo(c, Percentage.withPercentage(4));
  }

  private static ModeSet random(Random random, int count) {
    double[] hz = new double[count];
    double[] zeta = new double[count];
    double[] k = new double[count];
    for (int i = 0; i < count; i++) {
      hz[i] = 200 + 1200 * random.nextDouble();
      zeta[i] = 0.015 + 0.05 * random.nextDouble();
      k[i] = Math.pow(10, 6.3 + 1.2 * random.nextDouble());
    }
    return ModeSet.of(hz, zeta, k);
  }

  private static List<DampedMode> list(ModeSet set) {
    List<DampedMode> modes = new ArrayList<>();
    for (int i = 0; i < set.size(); i++) {
      modes.add(new DampedMode(set.frequencyHz(i), set.dampingRatio(i), set.stiffnessNPerM(i)));
    }
    return modes;
  }
}
