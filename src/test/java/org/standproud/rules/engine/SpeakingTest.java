package org.standproud.rules.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.Shop;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardReader;
import org.standproud.rules.card.Levels;
import org.standproud.rules.card.Severity;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.RuleTrace;

/**
 * When a card fires: above the level of its severity, draw by draw, unless a more severe one does.
 */
class SpeakingTest {

  private static final Levels LEVELS =
      new Levels(
          Map.of(Severity.STOP, 0.05, Severity.CAUTION, 0.25, Severity.NOTE, 0.5), "for this test");

  private static Card card(String id, String severity, String lines) {
    String text =
        """
        id: %s
        title: t
        severity: %s
        confidence: low
        source: {kind: shop, reference: r}
        since: 2026-11-25
        owner: o
        message: m
        remedy: r
        why: w
        examples:
          - {says: a, expect: fail, given: {stage: rough}}
          - {says: b, expect: pass, given: {stage: rough}}
        %s
        """
            .formatted(id, severity, lines);
    CardReader.Outcome outcome = CardReader.read("holding/" + id + ".yaml", text);
    assertThat(outcome.errors()).isEmpty();
    return Objects.requireNonNull(outcome.card());
  }

  private static RuleBase ruleBase(Card... cards) {
    CardCompiler.Outcome outcome =
        CardCompiler.compile(Arrays.asList(cards), Shop.TABLE, Shop.UNIT_READER);
    assertThat(outcome.errors()).isEmpty();
    Authorship by = new Authorship("a", "b", java.time.Instant.EPOCH, null);
    return new RuleBase(outcome.cards(), Shop.TABLE, LEVELS, by);
  }

  /** A number that is 0 in so many of a hundred draws, the first of them, and 2 in the rest. */
  private static EvidenceValue low(Fact fact, int draws) {
    double[] values = new double[100];
    Arrays.setAll(values, draw -> draw < draws ? 0 : 2);
    return new EvidenceValue(fact, new Value.Quantity(Sample.of(values)), List.of(), List.of());
  }

  private static Evidence slip(int draws) {
    return new Evidence(List.of(low(Shop.SLIP, draws)));
  }

  @ParameterizedTest
  @CsvSource({
    "stop, 5, PASS", "stop, 6, FAIL", "caution, 25, PASS", "caution, 26, FAIL",
    "note, 50, PASS", "note, 51, FAIL", "stop, 0, PASS", "note, 100, FAIL",
  })
  void aCardSpeaksAboveTheLevelOfItsSeverity(String severity, int draws, Kind kind) {
    RuleBase base = ruleBase(card("A", severity, "when: slip margin < 1"));
    CardTrace trace = base.evaluate(slip(draws)).card("A");
    assertThat(trace.kind()).isEqualTo(kind);
    assertThat(trace.share()).isEqualTo(draws / 100.0);
    assertThat(base.kinds(slip(draws)).cards().get(0).kind()).isEqualTo(kind);
  }

  @ParameterizedTest
  @CsvSource({"<", ">", "<=", ">=", "=", "!="})
  void aNumberThatExistsInNoDrawLeavesACardOpenWithAndWithoutReasons(String relation) {
    RuleBase base = ruleBase(card("A", "stop", "when: slip margin " + relation + " 1"));
    Value none = new Value.Missing("the set-up lets go", true);
    Evidence evidence =
        new Evidence(List.of(new EvidenceValue(Shop.SLIP, none, List.of(), List.of())));
    CardTrace trace = base.evaluate(evidence).card("A");
    assertThat(trace.kind()).isEqualTo(Kind.OPEN);
    assertThat(trace.draws()).isEqualTo(DrawTruth.GONE);
    assertThat(base.kinds(evidence).cards().get(0).kind()).isEqualTo(Kind.OPEN);
  }

  @Test
  void aCardMayHaveALevelOfItsOwn() {
    RuleBase base = ruleBase(card("A", "stop", "when: slip margin < 1\nspeaks above: 10 %"));
    assertThat(base.evaluate(slip(10)).card("A").kind()).isEqualTo(Kind.PASS);
    assertThat(base.evaluate(slip(11)).card("A").kind()).isEqualTo(Kind.FAIL);
  }

  /** Each of two conditions holds in half of the draws; together in all of those or in none. */
  @Test
  void conditionsAreJoinedDrawByDrawAndNotByTheirShares() {
    RuleBase base =
        ruleBase(
            card("A", "stop", "limits: {one: 1 m}\nwhen: [slip margin < 1, stick-out < one]"),
            card("B", "stop", "limits: {one: 1 m}\nwhen: [slip margin < 1, stick-out > one]"));
    RuleTrace trace =
        base.evaluate(new Evidence(List.of(low(Shop.SLIP, 50), low(Shop.STICK_OUT, 50))));
    assertThat(trace.card("A").share()).isEqualTo(0.5);
    assertThat(trace.card("B").share()).isEqualTo(0);
    assertThat(trace.card("B").kind()).isEqualTo(Kind.PASS);
  }

  /** What is missing matters only in the draws that the rest of the card has not settled. */
  @ParameterizedTest
  @CsvSource({"5, PASS", "6, OPEN", "100, OPEN"})
  void aMissingFactLeavesACardOpenOnlyWhereItCouldMakeItSpeak(int draws, Kind kind) {
    RuleBase base = ruleBase(card("A", "stop", "when: [slip margin < 1, grip depth < stick-out]"));
    assertThat(base.evaluate(slip(draws)).card("A").kind()).isEqualTo(kind);
  }

  /** A stop that is eased speaks at the level of what it is eased to. */
  @Test
  void theSeverityAfterEasingDecidesTheLevel() {
    Card stop = card("A", "stop", "when: slip margin < 1");
    Card easing =
        card("B", "note", "when: packed\neases: {card: A, to: caution, because: it is packed}");
    RuleBase base = ruleBase(stop, easing);
    Evidence packed = slip(20).with(Shop.evidence(Shop.PACKED, true).values());
    Evidence bare = slip(20).with(Shop.evidence(Shop.PACKED, false).values());
    assertThat(base.evaluate(bare).card("A").kind()).isEqualTo(Kind.FAIL);
    assertThat(base.evaluate(packed).card("A").severity()).isEqualTo(Severity.CAUTION);
    assertThat(base.evaluate(packed).card("A").kind()).isEqualTo(Kind.PASS);
    assertThat(base.kinds(packed).cards().get(0).kind()).isEqualTo(Kind.PASS);
    assertThat(base.evaluate(packed).card("A").level()).isEqualTo(0.25);
  }

  /** An easing must hold in all draws but those that the level of the eased card leaves. */
  @ParameterizedTest
  @CsvSource({"5, CAUTION", "6, STOP", "100, STOP"})
  void anEasingThatIsNotSureDoesNotEase(int draws, Severity severity) {
    RuleBase base =
        ruleBase(
            card("A", "stop", "when: packed"),
            card("B", "note", "when: slip margin > 1\neases: {card: A, to: caution, because: b}"));
    Evidence evidence = slip(draws).with(Shop.evidence(Shop.PACKED, true).values());
    assertThat(base.evaluate(evidence).card("A").severity()).isEqualTo(severity);
  }

  @Test
  void aStopSilencesTheCautionOnTheSameThing() {
    RuleBase base =
        ruleBase(
            card("A", "stop", "when: slip margin < 1"),
            card("B", "caution", "when: slip margin < 3\nsilenced by: [A]"));
    assertThat(base.evaluate(slip(0)).findings()).extracting(CardTrace::id).containsExactly("B");
    RuleTrace both = base.evaluate(slip(50));
    assertThat(both.findings()).extracting(CardTrace::id).containsExactly("A");
    assertThat(both.card("B").kind()).isEqualTo(Kind.FAIL);
    assertThat(both.card("B").silencedBy()).isEqualTo("A");
    assertThat(base.kinds(slip(50)).findings()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "silenced by: [Z] | there is no card with this id",
        "silenced by: [C] | a card is silenced by a more severe one; this is a note",
        "silenced by: [B] | a card is silenced by the finding of another",
      })
  void whoCannotSilenceIsRefused(String line, String message) {
    CardCompiler.Outcome outcome =
        CardCompiler.compile(
            List.of(
                card("B", "caution", "when: slip margin < 3\n" + line),
                card("C", "note", "when: slip margin < 1")),
            Shop.TABLE,
            Shop.UNIT_READER);
    assertThat(outcome.errors()).anyMatch(e -> e.toString().contains(message));
  }

  /** Shifting every draw to the worse never takes a finding away. */
  @Property(tries = 100)
  void aWorseNumberNeverQuietsACard(
      @ForAll @DoubleRange(min = 0.2, max = 2) double low,
      @ForAll @DoubleRange(min = 0, max = 2) double width,
      @ForAll @DoubleRange(min = 0, max = 1) double worse) {
    RuleBase base = ruleBase(card("A", "stop", "when: slip margin < 1"));
    CardTrace better = base.evaluate(spread(low, width)).card("A");
    CardTrace shifted = base.evaluate(spread(low - worse, width)).card("A");
    assertThat(shifted.share()).isGreaterThanOrEqualTo(better.share());
    if (better.kind() == Kind.FAIL) {
      assertThat(shifted.kind()).isEqualTo(Kind.FAIL);
    }
  }

  private static Evidence spread(double low, double width) {
    return Shop.evidence(
        Shop.SLIP, new org.standproud.setup.Band(low, low + width / 2, low + width));
  }
}
