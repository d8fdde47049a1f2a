package org.standproud.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Confidence;
import org.standproud.rules.card.Expectation;
import org.standproud.rules.card.Protects;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.SourceKind;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.Coverage;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.gate.GateResult.Published;
import org.standproud.rules.gate.GateResult.Rejected;
import org.standproud.rules.gate.RetiredCards;
import org.standproud.rules.language.Condition;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;

/** The cards of the shop, taken through the gate with every example they carry. */
class CatalogueTest {

  private static final Authorship BY =
      new Authorship("tool room", "the shop's cards", Instant.parse("2026-11-25T08:00:00Z"), null);

  private static GateResult result;

  @BeforeAll
  static void takeTheCardsThroughTheGate() {
    result =
        new Gate(
                Vocabulary.all(),
                Shop.UNIT_READER,
                name -> Optional.empty(),
                Coverage.Demand.REFUSE,
                RetiredCards.listed())
            .check(Path.of("rules"), BY);
  }

  private static RuleBase ruleBase() {
    assertThat(result).isInstanceOf(Published.class);
    return ((Published) result).ruleBase();
  }

  private static List<Card> cards() {
    return ruleBase().cards().stream().map(CompiledCard::card).toList();
  }

  @Test
  void everyCardIsReadAndEveryExampleBehavesAndShowsEachConditionBothWays() {
    assertThat(result instanceof Rejected rejected ? rejected.errors() : List.of()).isEmpty();
  }

  @Test
  void everyConditionThatAMissingFactLeavesOpenIsShownOpen() {
    long neverOpen =
        ruleBase().cards().stream()
            .flatMap(c -> c.when().stream())
            .filter(CatalogueTest::asksWhatIsKnown)
            .count();
    Coverage coverage = ((Published) result).coverage();
    assertThat(coverage.conditionsSeenUnknown() + neverOpen).isEqualTo(coverage.conditions());
  }

  /** Whether a fact is known is itself never open. */
  private static boolean asksWhatIsKnown(Condition condition) {
    return condition instanceof Condition.NotKnown
        || condition instanceof Condition.Not not && asksWhatIsKnown(not.condition());
  }

  @Test
  void whatReplacesARetiredCardIsThere() {
    List<String> ids = cards().stream().map(card -> card.id().text()).toList();
    assertThat(RetiredCards.listed().replacedBy()).isNotEmpty();
    RetiredCards.listed()
        .replacedBy()
        .forEach(
            (retired, by) -> {
              assertThat(ids).doesNotContain(retired);
              if (by.matches("[A-Z]+-\\d+")) {
                assertThat(ids).as(retired).contains(by);
              }
            });
  }

  /** Titles are claims; the numbers stand in the limits, where they have a unit. */
  @Test
  void noTitleSpellsOutANumber() {
    assertThat(cards())
        .extracting(Card::title)
        .noneMatch(
            title ->
                title.matches(
                    "(?i).*\\b(three|four|five|six|eight|ten|half|third|quarter|fifth|tenth"
                        + "|fifteenth|sixty|\\d+)\\b.*"));
  }

  @Test
  void everyThingThatCardsProtectIsProtectedBySome() {
    Map<Protects, Long> count =
        cards().stream().collect(Collectors.groupingBy(Card::protects, Collectors.counting()));
    assertThat(count).containsOnlyKeys(Protects.values());
    assertThat(cards()).hasSizeGreaterThan(70);
  }

  @Test
  void noTwoCardsMakeTheSameClaim() {
    assertThat(cards()).extracting(Card::title).doesNotHaveDuplicates();
    assertThat(cards()).extracting(Card::why).doesNotHaveDuplicates();
  }

  @Test
  void everyCardHasAtLeastThreeExamplesAndASetUpThatItPasses() {
    assertThat(cards())
        .allSatisfy(
            card -> {
              assertThat(card.examples()).as(card.title()).hasSizeGreaterThanOrEqualTo(3);
              assertThat(card.examples())
                  .extracting(e -> e.expect())
                  .contains(Expectation.FAIL, Expectation.PASS);
            });
  }

  @Test
  void theReasonOfACardIsTwoSentences() {
    assertThat(cards())
        .allSatisfy(
            card ->
                assertThat(Arrays.stream(card.why().split("[.](\\s|$)")).toList())
                    .as(card.title())
                    .hasSize(2));
  }

  @Test
  void nothingIsStoppedOnASourceOfLowConfidence() {
    assertThat(cards())
        .filteredOn(c -> c.flags() && c.severity() == Severity.STOP)
        .isNotEmpty()
        .noneMatch(c -> c.confidence() == Confidence.LOW);
  }

  @Test
  void commonPracticeNeverPassesForAGoodSource() {
    assertThat(cards())
        .filteredOn(c -> c.source().kind() == SourceKind.COMMON_PRACTICE)
        .isNotEmpty()
        .allSatisfy(
            c -> {
              assertThat(c.confidence()).as(c.title()).isNotEqualTo(Confidence.HIGH);
              assertThat(c.source().reference()).as(c.title()).contains("common practice");
            });
  }

  @Test
  void aStopIsEasedOnlyToACautionAndOnlyForAFinishingPass() {
    List<Card> easing =
        cards().stream()
            .filter(c -> c.change() != null && severity(c.change().card().text()) == Severity.STOP)
            .toList();
    assertThat(easing)
        .isNotEmpty()
        .allSatisfy(
            c -> {
              assertThat(c.change().to()).isEqualTo(Severity.CAUTION);
              assertThat(c.when()).anyMatch(w -> w.text().equals("finishing pass"));
            });
  }

  @Test
  void everyCardThatAsksToTouchOrMeasureTheWorkStopsTheSpindle() {
    assertThat(cards())
        .extracting(Card::remedy)
        .filteredOn(r -> r.matches("(?is).*\\b(indicat\\w+|wipe|glass|the wheel|a chip)\\b.*"))
        .isNotEmpty()
        .allMatch(r -> r.matches("(?is).*(spindle stopped|out of gear).*"));
  }

  @Test
  void aNarrowCutterRoughingATallPlateWithoutAStopIsStopped() {
    CardTrace trace = narrowCutter("rough", 0.003, 0.2e-3);
    assertThat(trace.kind()).isEqualTo(Kind.FAIL);
    assertThat(trace.severity()).isEqualTo(Severity.STOP);
  }

  @Test
  void theSameCutterOnALightFinishingPassIsACautionBecauseItPushesLittle() {
    CardTrace trace = narrowCutter("finish", 0.2e-3, 0.05e-3);
    assertThat(trace.kind()).isEqualTo(Kind.FAIL);
    assertThat(trace.severity()).isEqualTo(Severity.CAUTION);
    assertThat(trace.changes()).hasSize(1);
  }

  private static CardTrace narrowCutter(String stage, double depthM, double feedM) {
    List<Object> given =
        new ArrayList<>(
            List.of(
                Vocabulary.OPERATION, "top edge",
                Vocabulary.STAGE, stage,
                Vocabulary.COVERS_STOCK, false,
                Vocabulary.STICK_OUT, 0.080,
                Vocabulary.GRIP_DEPTH, 0.015,
                Vocabulary.UNSTOPPED_PUSH, 1700.0,
                Vocabulary.JAW_FRICTION, 0.15,
                Vocabulary.CLAMPING_FORCE, 10_000.0));
    given.addAll(
        List.of(
            Vocabulary.SLIP_MARGIN,
            1.7,
            Vocabulary.EDGE_CONDITION,
            "fresh",
            Vocabulary.CUTTER_DIAMETER,
            0.010,
            Vocabulary.RADIAL_DEPTH,
            0.010,
            Vocabulary.AXIAL_DEPTH,
            depthM,
            Vocabulary.FEED_PER_TOOTH,
            feedM));
    return ruleBase().evaluate(Shop.evidence(given.toArray())).card("DIR-003");
  }

  private static Severity severity(String id) {
    return cards().stream()
        .filter(c -> c.id().text().equals(id))
        .findFirst()
        .orElseThrow()
        .severity();
  }
}
