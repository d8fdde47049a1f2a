package org.standproud.rules.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.rules.Shop;
import org.standproud.rules.language.ConditionParser;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.setup.Band;

class MarginFinderTest {

  private static final Offset<Double> NEAR = Offset.offset(1e-9);

  /** The level of a stop, below which {@link Sample#spread} puts the low end of a band. */
  private static final double LEVEL = 0.05;

  private static Margin margin(String condition, Readings readings) throws Exception {
    return Objects.requireNonNull(
        new MarginFinder(readings, Judgements.NONE, LEVEL)
            .of(new ConditionParser(Shop.TABLE, Set.of()).parse(condition, Map.of())));
  }

  private static FactChange change(Margin margin, Fact fact) {
    return margin.changes().stream().filter(c -> c.fact().equals(fact)).findFirst().orElseThrow();
  }

  @Test
  void clearanceIsPositiveWhileNothingFlagsAndNegativeOnceItDoes() throws Exception {
    Readings readings = Shop.readings(Shop.SLIP, 1.5);
    assertThat(margin("slip margin < 1", readings).clearance()).isCloseTo(0.5, NEAR);
    assertThat(margin("slip margin < 2", readings).clearance()).isCloseTo(-0.5, NEAR);
    assertThat(margin("slip margin > 1", readings).clearance()).isCloseTo(-0.5, NEAR);
    assertThat(margin("not(slip margin > 1)", readings).clearance()).isCloseTo(0.5, NEAR);
  }

  @Test
  void theWorstEndOfTheBandIsNearerThanTheLikelyValue() throws Exception {
    Margin margin = margin("slip margin < 1", Shop.readings(Shop.SLIP, new Band(0.8, 1.5, 2)));
    assertThat(margin.clearance()).isCloseTo(0.5, NEAR);
    assertThat(margin.adverse()).isCloseTo(-0.2, NEAR);
  }

  @Test
  void beingCertainAsksForMoreGripThanBeingLikely() throws Exception {
    Readings readings =
        Shop.readings(Shop.STICK_OUT, new Band(0.070, 0.080, 0.090), Shop.GRIP_DEPTH, 0.020);
    FactChange grip = change(margin("stick-out / grip depth > 2.5", readings), Shop.GRIP_DEPTH);
    assertThat(grip.likely()).isCloseTo(0.032, NEAR);
    assertThat(grip.certain()).isCloseTo(0.036, NEAR);
  }

  @Test
  void aFactOnASideOfItsOwnFlipsAtTheVeryEndsOfTheOther() throws Exception {
    Band grip = new Band(0.018, 0.021, 0.027);
    Readings readings = Shop.readings(Shop.STICK_OUT, 0.1 + 0.2, Shop.GRIP_DEPTH, grip);
    for (String condition : List.of("stick-out > grip depth", "grip depth < stick-out")) {
      FactChange stands = change(margin(condition, readings), Shop.STICK_OUT);
      assertThat(stands.likely()).isEqualTo(0.021);
      assertThat(stands.certain()).isEqualTo(0.018);
      FactChange gripped = change(margin(condition, readings), Shop.GRIP_DEPTH);
      assertThat(gripped.likely()).isEqualTo(0.1 + 0.2);
    }
    FactChange lowered = change(margin("stick-out < grip depth", readings), Shop.STICK_OUT);
    assertThat(lowered.likely()).isEqualTo(0.021);
    assertThat(lowered.certain()).isEqualTo(0.027);
  }

  /** The joint draws decide: where it is clear, as many draws are past the limit as the level. */
  @Test
  void aFactUnderAQuotientFlipsAtTheLevelOfTheJointDraws() throws Exception {
    Band grip = new Band(0.016, 0.020, 0.025);
    Band thickness = new Band(0.010, 0.012, 0.015);
    String condition = "stick-out / grip depth > 4 * grip depth / stock thickness";
    Readings readings =
        Shop.readings(Shop.STICK_OUT, 0.08, Shop.GRIP_DEPTH, grip, Shop.THICKNESS, thickness);
    FactChange stands = change(margin(condition, readings), Shop.STICK_OUT);
    assertThat(stands.likely()).isEqualTo(4 * 0.020 / 0.012 * 0.020);
    double certain = Objects.requireNonNull(stands.certain());
    // No worst corner of both bands, which draws that are independent hardly ever meet.
    assertThat(certain)
        .isGreaterThan(4 * 0.016 / 0.015 * 0.016)
        .isLessThan(4 * 0.020 / 0.012 * 0.020);
    Margin at = margin(condition, readings.with(Shop.STICK_OUT, Band.exactly(certain)));
    Margin past = margin(condition, readings.with(Shop.STICK_OUT, Band.exactly(certain * 1.001)));
    assertThat(at.draws().exceeds(LEVEL)).isFalse();
    assertThat(at.adverse()).isCloseTo(0, NEAR);
    assertThat(past.draws().exceeds(LEVEL)).isTrue();
  }

  @Test
  void aFactOnBothSidesFlipsWhereBothMeet() throws Exception {
    Readings readings = Shop.readings(Shop.STICK_OUT, 0.05, Shop.GRIP_DEPTH, 0.02);
    FactChange stands =
        change(margin("stick-out > grip depth + stick-out / 2", readings), Shop.STICK_OUT);
    assertThat(stands.likely()).isCloseTo(0.04, NEAR);
  }

  @Test
  void ofTwoConditionsThatHoldTheNearerOneClearsTheCard() throws Exception {
    Readings readings = Shop.readings(Shop.SLIP, 0.9, Shop.STICK_OUT, 0.08, Shop.GRIP_DEPTH, 0.02);
    assertThat(margin("slip margin < 1 and stick-out > grip depth", readings).comparison())
        .isEqualTo("slip margin is less than 1");
    assertThat(margin("slip margin < 1 or stick-out > grip depth", readings).comparison())
        .isEqualTo("stick-out is more than grip depth");
  }

  @Test
  void ofTwoConditionsThatDoNotHoldTheFartherOneFlagsTheCard() throws Exception {
    Readings readings = Shop.readings(Shop.SLIP, 1.1, Shop.STICK_OUT, 0.02, Shop.GRIP_DEPTH, 0.08);
    assertThat(margin("slip margin < 1 and stick-out > grip depth", readings).comparison())
        .isEqualTo("stick-out is more than grip depth");
    assertThat(margin("slip margin < 1 or stick-out > grip depth", readings).comparison())
        .isEqualTo("slip margin is less than 1");
  }

  @Test
  void whatOnlyAWordCanFlipHasNoMargin() throws Exception {
    Readings readings = Shop.readings(Shop.STAGE, "finish", Shop.SLIP, 0.5);
    var condition =
        new ConditionParser(Shop.TABLE, Set.of())
            .parse("stage = \"rough\" and slip margin < 1", Map.of());
    assertThat(new MarginFinder(readings, Judgements.NONE, LEVEL).of(condition)).isNull();
  }

  @Test
  void aValueOutsideWhatMakesSenseIsNotProposed() throws Exception {
    Readings readings = Shop.readings(Shop.STICK_OUT, 0.02, Shop.GRIP_DEPTH, 0.08);
    FactChange grip = change(margin("stick-out + 20 * grip depth < 0", readings), Shop.GRIP_DEPTH);
    assertThat(grip.likely()).isNull();
  }

  @Test
  void thePassThatGoesFarthestPastTheLimitIsNamedWithWhatWouldClearIt() throws Exception {
    Readings passes = Shop.readings(Shop.DEPTHS, List.of(0.001, 0.004, 0.003), Shop.CUTTER, 0.02);
    Margin margin =
        margin("some d in depths of passes satisfies d > 0.1 * cutter diameter", passes);
    assertThat(margin.place()).isEqualTo(2);
    assertThat(margin.value()).isCloseTo(0.004, NEAR);
    assertThat(margin.threshold()).isCloseTo(0.002, NEAR);
    assertThat(margin.clearance()).isCloseTo(-0.002, NEAR);
    assertThat(change(margin, Shop.DEPTHS).from()).isCloseTo(0.004, NEAR);
    assertThat(change(margin, Shop.DEPTHS).likely()).isCloseTo(0.002, NEAR);
    assertThat(change(margin, Shop.CUTTER).likely()).isCloseTo(0.04, NEAR);
  }

  @Test
  void ofPassesThatAllKeepWithinTheLimitTheNearestIsNamed() throws Exception {
    Readings passes = Shop.readings(Shop.DEPTHS, List.of(0.001, 0.0015, 0.0012));
    Margin some = margin("some d in depths of passes satisfies 500 * d > stick-out", both(passes));
    assertThat(some.place()).isEqualTo(2);
    Margin every =
        margin("not(every d in depths of passes satisfies 500 * d < stick-out)", both(passes));
    assertThat(every.place()).isEqualTo(2);
    assertThat(every.clearance()).isCloseTo(some.clearance(), NEAR);
  }

  private static Readings both(Readings passes) {
    return passes.with(Shop.STICK_OUT, Band.exactly(1));
  }

  @Test
  void aBandOfOnePassIsCarriedIntoItsMargin() throws Exception {
    Readings passes =
        Shop.readings(
            Shop.DEPTHS, List.of(0.001, new Band(0.001, 0.002, 0.004)), Shop.CUTTER, 0.03);
    Margin margin =
        margin("some d in depths of passes satisfies d > 0.1 * cutter diameter", passes);
    assertThat(margin.place()).isEqualTo(2);
    assertThat(margin.clearance()).isCloseTo(0.001, NEAR);
    assertThat(margin.adverse()).isCloseTo(-0.001, NEAR);
  }

  @Test
  void aPlanOfNoPassesHasNoMargin() throws Exception {
    var condition =
        new ConditionParser(Shop.TABLE, Set.of())
            .parse("some d in depths of passes satisfies d > 0", Map.of());
    Readings none = Shop.readings(Shop.DEPTHS, List.of());
    assertThat(new MarginFinder(none, Judgements.NONE, LEVEL).of(condition)).isNull();
  }

  /** Two straight lines between percentiles, so at this level each draw is at the low end. */
  @Test
  void twoNumbersThatMustBeEqualAreAsFarApartAsInTheDrawAtTheLevel() throws Exception {
    Readings apart = Shop.readings(Shop.STICK_OUT, new Band(3, 4, 5), Shop.GRIP_DEPTH, 1.5);
    assertThat(margin("stick-out = grip depth", apart).clearance()).isCloseTo(2.5, NEAR);
    assertThat(margin("stick-out = grip depth", apart).adverse()).isCloseTo(1.5, NEAR);
    assertThat(margin("grip depth = stick-out", apart).adverse()).isCloseTo(1.5, NEAR);
    // To be different they need one number only: flagged by the whole reach of the draws.
    assertThat(margin("stick-out != grip depth", apart).clearance()).isCloseTo(-2.5, NEAR);
    assertThat(margin("stick-out != grip depth", apart).adverse()).isCloseTo(-3.5, NEAR);
    assertThat(margin("not(stick-out = grip depth)", apart).adverse()).isCloseTo(-3.5, NEAR);
    assertThat(margin("not(stick-out != grip depth)", apart).adverse()).isCloseTo(1.5, NEAR);
  }

  /** The card begins to speak where the margin at its level comes to zero, and not before. */
  @Property(tries = 100)
  void theMarginAtTheLevelSaysWhetherTheCardSpeaks(
      @ForAll @DoubleRange(min = 0.5, max = 2) double limit,
      @ForAll @DoubleRange(min = 0, max = 0.9) double level)
      throws Exception {
    Readings readings = Shop.readings(Shop.SLIP, new Band(0.6, 1.1, 1.9));
    for (String relation : List.of("<", "<=", ">", ">=")) {
      Margin margin =
          Objects.requireNonNull(
              new MarginFinder(readings, Judgements.NONE, level)
                  .of(
                      new ConditionParser(Shop.TABLE, Set.of())
                          .parse("slip margin " + relation + " " + limit, Map.of())));
      if (margin.adverse() != 0) {
        assertThat(margin.draws().exceeds(level)).isEqualTo(margin.adverse() < 0);
      }
    }
  }
}
