package org.standproud.advice.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.advice.DemoShop;
import org.standproud.advice.Verdict;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/** What to measure first. */
class SensitivityReportTest {

  static List<String> names() {
    return DemoShop.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void whatDecidesTheVerdictIsAskedFirstAndEveryShareIsAPart(String name) {
    SensitivityReport ask = SensitivityReport.of(DemoShop.setup(name), DemoShop.CARDS);
    assertThat(ask.questions().stream().map(MeasurementSuggestion::changesVerdict).toList())
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
  void everythingUnmeasuredIsAskedFor() {
    SensitivityReport ask = SensitivityReport.of(DemoShop.setup("12"), DemoShop.CARDS);
    assertThat(ask.questions())
        .extracting(q -> q.input().text())
        .contains(
            "/stock/surface",
            "/stock/highSpot",
            "/hold/seat",
            "/hold/stop",
            "/hold/stopHeight",
            "/cutter/edge",
            "/cutter/runOut",
            "/hold/clampingForce",
            "/hold/jawFriction");
  }

  @Test
  void whatTheCallerGaveExactlyIsNotAskedFor() {
    Setup setup = DemoShop.setup("03");
    Setup known =
        SetupEditor.of(setup)
            .clamping(Band.exactly(20_000), null, Band.exactly(0.12))
            .slides(false, true)
            .done();
    assertThat(SensitivityReport.of(known, DemoShop.CARDS).questions())
        .extracting(q -> q.input().text())
        .doesNotContain(
            "/hold/clampingForce", "/hold/jawFriction", "/cut/slideLocked", "/hold/stop");
  }

  @Test
  void anAnswerIsTheOneTheCardsGiveIfTheInputIsSo() {
    Setup setup = DemoShop.setup("12");
    Judged base = DemoShop.trials().of(setup);
    SensitivityReport ask = SensitivityReport.of(setup, DemoShop.CARDS);
    for (Unknown unknown : Unknowns.of(setup, EvidenceGathering.of(setup))) {
      MeasurementSuggestion question =
          ask.questions().stream()
              .filter(q -> q.input().equals(unknown.input()))
              .findFirst()
              .orElseThrow();
      Judged first = DemoShop.trials().of(unknown.cases().get(0).setup());
      assertThat(question.answers().get(0).score()).isEqualTo(first.score());
      assertThat(question.answers().get(0).verdict()).isEqualTo(first.verdict());
    }
    assertThat(base.verdict()).isIn(Verdict.DO_NOT_RUN, Verdict.NOT_JUDGED);
  }

  @Test
  void moreClampingForceNeverLeavesMoreStopsThanLess() {
    SensitivityReport ask = SensitivityReport.of(DemoShop.setup("03"), DemoShop.CARDS);
    MeasurementSuggestion force =
        ask.questions().stream()
            .filter(q -> q.input().text().equals("/hold/clampingForce"))
            .findFirst()
            .orElseThrow();
    assertThat(force.answers().get(0).stops()).containsAll(force.answers().get(1).stops());
  }
}
