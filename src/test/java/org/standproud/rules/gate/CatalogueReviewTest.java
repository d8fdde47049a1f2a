package org.standproud.rules.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.standproud.rules.gate.CardWarning.Kind;

/** Cards that can go into service but cannot matter are reported to their author. */
class CatalogueReviewTest {

  static String card(String id, String severity, String scope, String limits, String when) {
    return """
        id: %s
        title: The claim of %s
        severity: %s
        confidence: low
        source: {kind: shop, reference: this shop}
        since: 2026-11-25
        owner: tool room
        appliesTo: {%s}
        limits: {%s}
        when: %s
        message: m
        remedy: r
        why: w
        examples:
          - {says: a, expect: fail, given: {operation: top edge, stage: rough, packed: true, slip margin: 1, stick-out: 90 mm, stop: none}}
          - {says: b, expect: pass, given: {operation: top edge, stage: rough, packed: false, slip margin: 9, stick-out: 10 mm, stop: left}}
        """
        .formatted(id, id, severity, scope, limits, when);
  }

  static List<CardWarning> warnings(String... cards) {
    Map<String, String> files = new TreeMap<>();
    for (String card : cards) {
      files.put("holding/" + card.substring(4, 5) + ".yaml", card);
    }
    return GateTest.gate(Coverage.Demand.REPORT).check(files, GateTest.BY).warnings();
  }

  private static String derives(String id, String when, String judgement) {
    return card(id, "note", "", "", when)
        .replace("message: m\n", "derives: " + judgement + "\n")
        .replace("limits: {}\n", "")
        .replace("appliesTo: {}\n", "");
  }

  private static String eases(String id, String when, String other) {
    return card(id, "note", "", "", when)
        .replace("message: m\n", "eases: {card: " + other + ", to: note, because: b}\n")
        .replace("limits: {}\n", "")
        .replace("appliesTo: {}\n", "");
  }

  @Test
  void cardsThatSayDifferentThingsAreNotDoubted() {
    assertThat(
            warnings(
                card("A", "stop", "stage: rough", "low: 2", "slip margin < low"),
                card("B", "caution", "stage: rough", "fair: 3", "slip margin < fair"),
                card("C", "note", "", "", "packed")))
        .isEmpty();
  }

  @Test
  void twoCardsWithOneScopeAndOneConditionAreReportedWhateverTheirLimitsAreNamed() {
    assertThat(
            warnings(
                card("A", "stop", "stage: rough", "low: 2", "slip margin < low"),
                card("B", "stop", "stage: rough", "least: 2.0", "least > slip margin")))
        .singleElement()
        .satisfies(
            w -> {
              assertThat(w.kind()).isEqualTo(Kind.SAME_CONDITIONS);
              assertThat(w.card()).isEqualTo("B");
              assertThat(w.toString())
                  .isEqualTo("holding/B.yaml:1:5: \"B\": the scope and conditions are those of A");
            });
  }

  @Test
  void theSameConditionsInAnotherOrderAreTheSame() {
    assertThat(
            warnings(
                card("A", "stop", "", "", "[packed, slip margin < 2]"),
                card("B", "stop", "", "", "slip margin < 2 and packed")))
        .extracting(CardWarning::kind)
        .containsExactly(Kind.SAME_CONDITIONS);
  }

  @Test
  void aMilderCardWithTheConditionsOfAGraverOneIsShadowed() {
    assertThat(
            warnings(
                card("A", "stop", "", "low: 2", "slip margin < low"),
                card("B", "caution", "", "low: 2", "slip margin < low")))
        .extracting(CardWarning::kind, CardWarning::card)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(Kind.SHADOWED, "B"));
  }

  @Test
  void aMilderCardWithATighterLimitThanAGraverOneIsShadowed() {
    assertThat(
            warnings(
                card("A", "stop", "", "low: 3", "slip margin < low"),
                card("B", "caution", "", "low: 2", "slip margin < low")))
        .extracting(CardWarning::kind, CardWarning::card)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(Kind.SHADOWED, "B"));
  }

  @Test
  void aFindingThatMayBeEasedShadowsNothing() {
    assertThat(
            warnings(
                card("A", "stop", "", "low: 2", "slip margin < low"),
                card("B", "caution", "", "low: 2", "slip margin < low"),
                eases("C", "packed", "A")))
        .isEmpty();
  }

  @Test
  void anUnreadJudgementIsReported() {
    assertThat(warnings(derives("A", "packed", "soft seat")))
        .extracting(CardWarning::kind)
        .containsExactly(Kind.JUDGEMENT_UNREAD);
  }

  @Test
  void aNumberThatWouldHaveToBeTwoThingsAtOnceIsReported() {
    assertThat(warnings(card("A", "stop", "", "", "[slip margin < 2, slip margin > 3]")))
        .extracting(CardWarning::kind)
        .containsExactly(Kind.NEVER_HOLDS);
    assertThat(warnings(card("A", "stop", "", "", "[packed, not(packed)]")))
        .extracting(CardWarning::kind)
        .containsExactly(Kind.NEVER_HOLDS);
  }

  @Test
  void aNumberOutsideTheRangeOfItsFactIsReported() {
    assertThat(warnings(card("A", "stop", "", "far: 11000 mm", "stick-out > far")))
        .extracting(CardWarning::kind)
        .containsExactly(Kind.NEVER_HOLDS);
  }

  @Test
  void aJudgementThatNeedsAnotherOperationIsReported() {
    String judgement =
        derives("A", "packed", "soft seat")
            .replace("when: packed", "appliesTo: {operation: broad side}\nwhen: packed");
    assertThat(warnings(judgement, card("B", "stop", "operation: top edge", "", "soft seat")))
        .extracting(CardWarning::kind, CardWarning::card)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(Kind.NEVER_HOLDS, "B"));
  }

  @Test
  void anEasingThatCanNeverMeetItsFindingIsReported() {
    assertThat(
            warnings(
                card("A", "stop", "stage: rough", "", "packed"),
                eases("B", "stage = \"finish\"", "A")))
        .extracting(CardWarning::kind, CardWarning::card)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(Kind.NEVER_ACTS, "B"));
  }
}
