package org.standproud.rules.trace;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.Shop;
import org.standproud.rules.SmallCards;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.UnitSystem;

class PassExplanationTest {

  private static final RuleBase CARDS = SmallCards.ruleBase(SmallCards.files());

  private static String words(Evidence evidence, String card, UnitSystem units) {
    return PassExplanation.of(CARDS.evaluate(evidence, card), units).orElseThrow().words();
  }

  @Test
  void aCardThatKeptQuietSaysByHowMuch() {
    // 44 mm over 20 mm is 2.2; 2.5 times 20 mm is 50 mm; 44 mm over 2.5 is 17.6 mm
    assertThat(
            words(
                Shop.evidence(Shop.STICK_OUT, 0.044, Shop.GRIP_DEPTH, 0.020),
                "HOLD-001",
                UnitSystem.METRIC))
        .isEqualTo(
            "HOLD-001 passed because this does not hold: stick-out / grip depth is more than tall"
                + " (2.5): 2.2 against 2.5; it would hold with stick-out at 50 mm instead of 44 mm;"
                + " it would hold with grip depth at 17.6 mm instead of 20 mm.");
  }

  @Test
  void aShopThatWorksInInchesReadsInches() {
    assertThat(
            words(
                Shop.evidence(Shop.STICK_OUT, 0.0508, Shop.GRIP_DEPTH, 0.0254),
                "HOLD-001",
                UnitSystem.INCH))
        .contains("stick-out at 2.5 in instead of 2 in");
  }

  @Test
  void theNearestOfSeveralConditionsIsNamed() {
    Evidence wide =
        Shop.evidence(
            Shop.OPERATION,
            "top edge",
            Shop.CUTTER,
            0.022,
            Shop.THICKNESS,
            0.020,
            Shop.STOP,
            "left");
    PassExplanation why =
        PassExplanation.of(CARDS.evaluate(wide, "DIR-001"), UnitSystem.METRIC).orElseThrow();
    assertThat(why.condition()).isEqualTo("cutter diameter is less than stock thickness");
    assertThat(why.others()).isEqualTo(1);
    assertThat(why.words()).endsWith("1 other condition does not hold either.");
  }

  @Test
  void aJudgementThatDoesNotHoldIsFollowedToTheConditionThatKeepsItFromHolding() {
    Evidence rough = Shop.evidence(Shop.STAGE, "finish", Shop.SLIP, 2.0);
    PassExplanation why =
        PassExplanation.of(CARDS.evaluate(rough), "DIR-020", UnitSystem.METRIC).orElseThrow();
    assertThat(why.words())
        .startsWith(
            "DIR-020 passed because this does not hold: light finishing pass. DIR-010 passed"
                + " because this does not hold: slip margin is at least ample (3): 2 against 3;");
    assertThat(why.margin()).isNotNull();
  }

  @Test
  void aWordThatExcludedACardIsNamed() {
    Evidence stopped =
        Shop.evidence(
            Shop.OPERATION,
            "top edge",
            Shop.CUTTER,
            0.010,
            Shop.THICKNESS,
            0.020,
            Shop.STOP,
            "left");
    assertThat(words(stopped, "DIR-001", UnitSystem.METRIC))
        .isEqualTo("DIR-001 passed because this does not hold: stop is none; stop is left.");
  }

  @Test
  void aCardAboutOtherSetUpsSaysWhichItIsAbout() {
    assertThat(words(Shop.evidence(Shop.OPERATION, "broad side"), "DIR-001", UnitSystem.METRIC))
        .startsWith(
            "DIR-001 is about set-ups where operation is top edge; operation is broad side");
  }

  @Test
  void aCardThatFlagsOrIsOpenDidNotKeepQuiet() {
    Evidence tall = Shop.evidence(Shop.STICK_OUT, 0.080, Shop.GRIP_DEPTH, 0.020);
    assertThat(PassExplanation.of(CARDS.evaluate(tall, "HOLD-001"), UnitSystem.METRIC)).isEmpty();
    assertThat(PassExplanation.of(CARDS.evaluate(tall, "DIR-001"), UnitSystem.METRIC)).isEmpty();
  }
}
