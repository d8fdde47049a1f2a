package org.standproud.advice.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.advice.DemoShop;
import org.standproud.advice.trial.Judged;
import org.standproud.advice.trial.Rework;
import org.standproud.mechanics.gathering.EvidenceGathering;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/** What to measure first. */
class AskBackTest {

  static List<String> names() {
    return DemoShop.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void whatDecidesTheVerdictIsAskedFirstAndEveryShareIsAPart(String name) {
    AskBack ask = AskBack.of(DemoShop.setup(name), DemoShop.CARDS);
    assertThat(ask.questions().stream().map(Question::changesVerdict).toList())
        .isSortedAccordingTo((a, b) -> Boolean.compare(b, a));
    assertThat(ask.questions())
        .allSatisfy(
            q -> {
              assertThat(q.answers()).hasSizeGreaterThanOrEqualTo(2);
              assertThat(q.measure()).isNotBlank();
              if (q.share() != null) {
                assertThat(q.share()).isBetween(0.0, 1.0);
              }
            });
  }

  @Test
  void everythingNobodyMeasuredIsAskedFor() {
    AskBack ask = AskBack.of(DemoShop.setup("12"), DemoShop.CARDS);
    assertThat(ask.questions())
        .extracting(Question::input)
        .contains(
            "stock.surface",
            "stock.highSpot",
            "hold.seat",
            "hold.stop",
            "hold.stopHeight",
            "cutter.edge",
            "cutter.runOut",
            "hold.clampingForce",
            "hold.jawFriction");
  }

  @Test
  void whatTheCallerGaveExactlyIsNotAskedFor() {
    Setup setup = DemoShop.setup("03");
    Setup told =
        Rework.of(setup)
            .clamping(Band.exactly(20_000), null, Band.exactly(0.12))
            .slides(false, true)
            .done();
    assertThat(AskBack.of(told, DemoShop.CARDS).questions())
        .extracting(Question::input)
        .doesNotContain("hold.clampingForce", "hold.jawFriction", "cut.slideLocked", "hold.stop");
  }

  @Test
  void anAnswerIsTheOneTheCardsGiveIfTheInputIsSo() {
    Setup setup = DemoShop.setup("12");
    Judged base = DemoShop.trials().of(setup);
    AskBack ask = AskBack.of(setup, DemoShop.CARDS);
    for (Unknown unknown : Unknowns.of(setup, EvidenceGathering.of(setup))) {
      Question question =
          ask.questions().stream()
              .filter(q -> q.input().equals(unknown.input()))
              .findFirst()
              .orElseThrow();
      Judged first = DemoShop.trials().of(unknown.cases().get(0).setup());
      assertThat(question.answers().get(0).score()).isEqualTo(first.score());
      assertThat(question.answers().get(0).verdict()).isEqualTo(first.verdict().words());
    }
    assertThat(base.verdict().words()).isIn("do not run", "not judged");
  }

  @Test
  void moreClampingForceNeverLeavesMoreStopsThanLess() {
    AskBack ask = AskBack.of(DemoShop.setup("03"), DemoShop.CARDS);
    Question force =
        ask.questions().stream()
            .filter(q -> q.input().equals("hold.clampingForce"))
            .findFirst()
            .orElseThrow();
    assertThat(force.answers().get(0).stops()).containsAll(force.answers().get(1).stops());
  }
}
