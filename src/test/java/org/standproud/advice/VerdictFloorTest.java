package org.standproud.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Band;
import org.standproud.setup.UnitSystem;

class VerdictFloorTest {

  private static final Authorship BY = new Authorship("a", "n", Instant.EPOCH, null);

  private static Evidence held(Band margin) {
    return new Evidence(
        List.of(
            new EvidenceValue(
                Vocabulary.HOLDING_MARGIN, new Value.Quantity(margin), List.of(), List.of())));
  }

  private static EvidenceValue nine(Fact fact) {
    return new EvidenceValue(fact, new Value.Quantity(Band.exactly(9)), List.of(), List.of());
  }

  private static RuleBase only(String... ids) {
    List<CompiledCard> cards =
        DemoShop.CARDS.cards().stream().filter(c -> List.of(ids).contains(c.id())).toList();
    return new RuleBase(cards, DemoShop.CARDS.facts(), DemoShop.CARDS.levels(), BY);
  }

  private static Advice advice(RuleBase base, Evidence evidence) {
    return Adviser.advise(evidence, base.evaluate(evidence), UnitSystem.METRIC);
  }

  @Test
  void cardsWithoutAStopOnTheHoldPromiseNothing() {
    Evidence good = held(Band.exactly(9));
    RuleBase without = only("HOLD-010");
    Advice advice = advice(without, good);
    assertThat(advice.verdict()).isEqualTo(Verdict.NOT_JUDGED);
    assertThat(advice.score()).isLessThanOrEqualTo(50);
    assertThat(advice.summary()).contains("No stop in the live rules judged");
    assertThat(Adviser.verdict(without, without.kinds(good), good)).isEqualTo(Verdict.NOT_JUDGED);
  }

  /** Set-ups of the shop that must not be run, judged by cards none of which is a stop. */
  @ParameterizedTest
  @ValueSource(strings = {"03", "04", "08", "12"})
  void cardsWithoutStopsLetNoBadSetUpRun(String start) {
    Evidence evidence = EvidenceGathering.of(DemoShop.setup(start));
    RuleBase without = only("HOLD-010");
    assertThat(advice(without, evidence).verdict()).isIn(Verdict.DO_NOT_RUN, Verdict.NOT_JUDGED);
    assertThat(Adviser.verdict(without, without.kinds(evidence), evidence))
        .isIn(Verdict.DO_NOT_RUN, Verdict.NOT_JUDGED);
  }

  @Test
  void aStopThatJudgesTheHoldIsEnough() {
    Evidence good =
        new Evidence(
            Stream.of(
                    Vocabulary.HOLDING_MARGIN,
                    Vocabulary.TIP_MARGIN_FIXED,
                    Vocabulary.TIP_MARGIN_MOVABLE)
                .map(VerdictFloorTest::nine)
                .toList());
    RuleBase with = only("HOLD-011");
    assertThat(advice(with, good).verdict()).isEqualTo(Verdict.RUN);
    assertThat(Adviser.verdict(with, with.kinds(good), good)).isEqualTo(Verdict.RUN);
  }

  /** The margin is capacity over demand, so below 1 the load is more than the hold can bear. */
  @Property(tries = 100)
  void aHoldThatLetsGoForCertainIsNeverRun(
      @ForAll @DoubleRange(min = 0, max = 0.99) double low,
      @ForAll @DoubleRange(min = 0, max = 0.99) double high) {
    Evidence evidence =
        held(new Band(Math.min(low, high), Math.min(low, high), Math.max(low, high)));
    for (RuleBase base : List.of(only("HOLD-010"), only("HOLD-006"))) {
      Advice advice = advice(base, evidence);
      assertThat(advice.verdict()).isEqualTo(Verdict.DO_NOT_RUN);
      assertThat(advice.score()).isLessThanOrEqualTo(30);
      assertThat(advice.summary()).contains("less than the load");
      assertThat(Adviser.verdict(base, base.kinds(evidence), evidence))
          .isEqualTo(Verdict.DO_NOT_RUN);
    }
    assertThat(Adviser.verdict(List.of(), evidence)).isEqualTo(Verdict.DO_NOT_RUN);
  }

  @Test
  void aHoldThatMayBearTheLoadIsLeftToTheCards() {
    assertThat(VerdictFloor.under(Verdict.RUN, held(new Band(0.5, 0.9, 1.1))))
        .isEqualTo(Verdict.RUN);
    assertThat(VerdictFloor.under(Verdict.RUN, held(Band.exactly(1)))).isEqualTo(Verdict.RUN);
    assertThat(Optional.of(VerdictFloor.under(Verdict.NOT_JUDGED, Findings.NOTHING)))
        .contains(Verdict.NOT_JUDGED);
  }
}
