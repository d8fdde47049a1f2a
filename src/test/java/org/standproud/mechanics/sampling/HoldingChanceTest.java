package org.standproud.mechanics.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.hipparchus.random.Well19937c;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.gathering.EvidenceGathering;
import org.standproud.mechanics.gathering.RandomShop;
import org.standproud.mechanics.reach.SmallShop;
import org.standproud.setup.Band;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Hold;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;

class HoldingChanceTest {

  private static final SamplingPlan PLAN = SamplingPlan.USUAL;

  private static Setup clamped(@Nullable Band clampingForceN, @Nullable Band friction) {
    Setup plate =
        SmallShop.plate(
            SmallShop.faceMill(),
            SmallShop.pass(Operation.TOP_EDGE, .001, 0, FeedDirection.PLUS_X));
    Hold hold = plate.hold();
    return new Setup(
        plate.job(),
        plate.stock(),
        new Hold(
            hold.vise(),
            hold.gripDepthM(),
            clampingForceN,
            null,
            friction,
            hold.packing(),
            hold.seat(),
            hold.stop(),
            hold.viseRunOutM()),
        plate.machine(),
        plate.cutter(),
        plate.cut(),
        plate.units());
  }

  private static HoldingChance chance(Setup setup, SamplingPlan plan) {
    return HoldingChance.of(setup, plan).orElseThrow();
  }

  @Test
  void theSameSeedGivesTheSameAnswerAndAnotherOneAgreesWithinItsError() {
    Setup setup = clamped(new Band(1_000, 2_500, 6_000), null);
    HoldingChance one = chance(setup, PLAN);
    HoldingChance other = chance(setup, new SamplingPlan(2_000, 7, 1));
    assertThat(chance(setup, PLAN)).isEqualTo(one);
    assertThat(one.probability()).isBetween(0.02, 0.98);
    assertThat(other.probability())
        .isNotEqualTo(one.probability())
        .isCloseTo(one.probability(), within(4 * Math.sqrt(2) * one.standardError()));
  }

  @Test
  void moreClampingForceNeverMakesItLessLikelyToHold() {
    double before = 0;
    for (double forceN : new double[] {300, 1_000, 2_000, 4_000, 8_000, 20_000}) {
      double now = chance(clamped(Band.exactly(forceN), null), PLAN).probability();
      assertThat(now).isGreaterThanOrEqualTo(before);
      before = now;
    }
    assertThat(before).isGreaterThan(0.9);
  }

  @Test
  void aHigherMarginIsReachedLessOften() {
    Setup setup = clamped(new Band(2_000, 4_000, 8_000), null);
    double held = chance(setup, PLAN).probability();
    assertThat(chance(setup, new SamplingPlan(2_000, PLAN.seed(), 2.5)).probability())
        .isLessThan(held);
  }

  @Test
  void whatIsLeastKnownIsToBeMeasuredFirst() {
    Band sure = Band.exactly(0.15);
    Setup loose = clamped(new Band(1_000, 5_000, 20_000), sure);
    Setup slippery = clamped(Band.exactly(5_000), new Band(0.03, 0.15, 0.6));
    assertThat(chance(loose, PLAN).measureFirst().get(0).unknown())
        .isEqualTo(Unknown.CLAMPING_FORCE);
    assertThat(chance(slippery, PLAN).measureFirst().get(0).unknown()).isEqualTo(Unknown.FRICTION);
    assertThat(chance(loose, PLAN).measureFirst())
        .noneMatch(contribution -> contribution.unknown() == Unknown.FRICTION);
  }

  @Test
  void whenNothingEverHoldsTheErrorIsNotNothing() {
    HoldingChance never = chance(clamped(Band.exactly(20), null), PLAN);
    assertThat(never.probability()).isZero();
    assertThat(never.standardError()).isBetween(1e-4, 1e-3);
  }

  /** The sampling and the bands are two ways through the same models: one lies inside the other. */
  @Test
  void theDrawsLieInsideTheBandOfTheEvidence() {
    RandomShop shop = new RandomShop(3);
    int compared = 0;
    for (int i = 0; i < 60; i++) {
      Setup setup = shop.next();
      Optional<HoldingChance> chance = sampled(setup);
      Value margin = EvidenceGathering.of(setup).get(Vocabulary.HOLDING_MARGIN);
      if (chance.isPresent() && margin instanceof Value.Quantity quantity) {
        compared++;
        Band band = quantity.band();
        Band drawn = chance.get().leastMargin();
        assertThat(drawn.low()).isGreaterThanOrEqualTo(0.95 * band.low());
        assertThat(drawn.likely()).isLessThanOrEqualTo(1.05 * band.high());
      }
    }
    assertThat(compared).isGreaterThan(20);
  }

  private static Optional<HoldingChance> sampled(Setup setup) {
    try {
      return HoldingChance.of(setup, new SamplingPlan(200, 1, 1));
    } catch (OutsideValidity refusal) {
      return Optional.empty();
    }
  }

  @Test
  void aTriangleHasTheMeanOfItsCornersAndNothingBeyondThem() {
    Band band = new Band(1, 2, 6);
    Well19937c random = new Well19937c(5);
    double sum = 0;
    for (int i = 0; i < 20_000; i++) {
      double value = Triangle.at(band, random.nextDouble());
      assertThat(value).isBetween(1.0, 6.0);
      sum += value;
    }
    // mean (1 + 2 + 6)/3, textbook formula of the triangular distribution
    assertThat(sum / 20_000).isCloseTo(3, within(0.03));
    assertThat(Triangle.at(band, 0)).isEqualTo(1);
    assertThat(Triangle.at(band, 1)).isEqualTo(6);
  }

  /** Of a sum of independent inputs each has the share of its own variance (here 4 of 5). */
  @Test
  void anInputWithFourFifthsOfTheVarianceIsSaidToHaveAboutThat() {
    Well19937c random = new Well19937c(9);
    int n = 20_000;
    double[] strong = new double[n];
    double[] weak = new double[n];
    double[] idle = new double[n];
    double[] sum = new double[n];
    for (int i = 0; i < n; i++) {
      strong[i] = random.nextGaussian();
      weak[i] = random.nextGaussian();
      idle[i] = random.nextGaussian();
      sum[i] = 2 * strong[i] + weak[i];
    }
    CorrelationRatio ratio = new CorrelationRatio(sum, 20);
    assertThat(ratio.of(strong)).isCloseTo(0.8, within(0.04));
    assertThat(ratio.of(weak)).isCloseTo(0.2, within(0.04));
    assertThat(ratio.of(idle)).isCloseTo(0, within(0.005));
  }
}
