package org.standproud.mechanics.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standproud.mechanics.reach.SmallShop.clamped;

import java.util.Optional;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.evidence.stage.RandomShop;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

class HoldingChanceTest {

  private static final SamplingPlan PLAN =
      new SamplingPlan(2_000, SamplingPlan.USUAL.seed(), SamplingPlan.USUAL.leastMargin());
  private static final PublishedTable TRIANGLE =
      new PublishedTable(
          Subject.SAMPLING,
          "quantiles of the triangular distribution on 1, 2 and 6, by its inverse",
          SourceTag.DERIVED);
  private static final PublishedTable BINOMIAL =
      new PublishedTable(
          Subject.SAMPLING,
          "sqrt(p (1 - p)/n) of the binomial, p drawn to one half by one draw each way",
          SourceTag.DERIVED);

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

  private static double share(Setup setup, Unknown unknown) {
    return chance(setup, PLAN).measureFirst().stream()
        .filter(contribution -> contribution.unknown() == unknown)
        .mapToDouble(Contribution::share)
        .findFirst()
        .orElse(0);
  }

  @Test
  void whatIsLeastKnownIsToBeMeasuredFirst() {
    Band sure = Band.exactly(0.15);
    Setup loose = clamped(new Band(1_000, 5_000, 20_000), sure);
    Setup slippery = clamped(Band.exactly(5_000), new Band(0.03, 0.15, 0.6));
    assertThat(chance(loose, PLAN).measureFirst().get(0).unknown())
        .isEqualTo(Unknown.CLAMPING_FORCE);
    // Friction hardly counts where the stock tips before it slips.
    assertThat(share(slippery, Unknown.FRICTION))
        .isGreaterThan(share(slippery, Unknown.LIFT_RATIO));
    assertThat(chance(loose, PLAN).measureFirst())
        .noneMatch(contribution -> contribution.unknown() == Unknown.FRICTION);
  }

  @Test
  void whenNothingEverHoldsTheErrorIsNotNothing() {
    HoldingChance never = chance(clamped(Band.exactly(20), null), PLAN);
    assertThat(never.probability()).isZero();
    assertThat(never.standardError()).isBetween(1e-4, 1e-3);
  }

  /** The chance and the evidence are of the same draws: the least margin is no more than any. */
  @Test
  void theChanceIsOfTheDrawsOfTheEvidence() {
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
        // Between two draws the one takes the nearer and the other a straight line.
        assertThat(drawn.low()).isLessThanOrEqualTo(1.1 * band.low());
        assertThat(drawn.likely()).isLessThanOrEqualTo(1.1 * band.likely());
        assertThat(chance.get().probability())
            .isLessThanOrEqualTo(quantity.sample().share(m -> m >= 1));
      }
    }
    assertThat(compared).isGreaterThan(20);
  }

  private static Optional<HoldingChance> sampled(Setup setup) {
    try {
      return HoldingChance.of(setup, new SamplingPlan(Sample.DRAWS, JointSample.SEED, 1));
    } catch (OutsideValidity refusal) {
      return Optional.empty();
    }
  }

  /** 1 + sqrt(u .2) 5 up to u .2, beyond it 6 - sqrt((1 - u) .8) 5 [derived]. */
  @Test
  @Tag(PublishedTable.TESTS)
  void aShareOfATriangleIsReachedWhereItsInverseSays() {
    Band band = new Band(1, 2, 6);
    TRIANGLE.row("u .05").figure("value", "1", 1.5, Triangle.at(band, .05), 1e-9);
    TRIANGLE.row("u .2").figure("value", "1", 2, Triangle.at(band, .2), 1e-9);
    TRIANGLE.row("u .5, median").figure("value", "1", 2.837722, Triangle.at(band, .5), 1e-6);
    TRIANGLE.row("u .8").figure("value", "1", 4, Triangle.at(band, .8), 1e-9);
  }

  /** With none of 2,000 p is 1/2002; with any share k of 2,000 it is (k + 1)/2002 [derived]. */
  @Test
  @Tag(PublishedTable.TESTS)
  void theStandardErrorIsThatOfTheBinomial() {
    BINOMIAL
        .row("none of 2,000 draws")
        .figure(
            "standard error",
            "1",
            4.9963e-4,
            chance(clamped(Band.exactly(20), null), PLAN).standardError(),
            1e-7);
    HoldingChance some = chance(clamped(new Band(1_000, 2_500, 6_000), null), PLAN);
    double drawn = (some.probability() * 2_000 + 1) / 2_002;
    assertThat(some.standardError())
        .isCloseTo(Math.sqrt(drawn * (1 - drawn) / 2_000), within(1e-12));
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
  void anInputWithFourFifthsOfTheVarianceHasAboutThatShare() {
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
    assertThat(ratio.of(CorrelationRatio.order(strong))).isCloseTo(0.8, within(0.04));
    assertThat(ratio.of(CorrelationRatio.order(weak))).isCloseTo(0.2, within(0.04));
    assertThat(ratio.of(CorrelationRatio.order(idle))).isCloseTo(0, within(0.005));
  }
}
