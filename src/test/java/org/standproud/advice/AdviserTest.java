package org.standproud.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.card.Severity;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;

/** The whole advice on a set-up. */
class AdviserTest {

  static List<String> names() {
    return DemoShop.names();
  }

  private static Advice advice(String name) {
    Setup setup = DemoShop.setup(name);
    Evidence evidence = EvidenceGathering.of(setup);
    return Adviser.advise(evidence, DemoShop.CARDS.evaluate(evidence), setup.units());
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyAnswerCarriesEveryCaution(String name) {
    assertThat(advice(name).cautions()).isEqualTo(Cautions.all()).isNotEmpty();
  }

  @Test
  void anAnswerAboutNothingCarriesEveryCautionToo() {
    RuleTrace trace = DemoShop.CARDS.evaluate(Findings.NOTHING);
    Advice advice = Adviser.advise(Findings.NOTHING, trace, UnitSystem.METRIC);
    assertThat(advice.cautions()).isEqualTo(Cautions.all());
    assertThat(advice.verdict()).isNotEqualTo(Verdict.RUN);
  }

  @ParameterizedTest
  @MethodSource("names")
  void theGravestFindingComesFirstAndIsInTheSummary(String name) {
    Advice advice = advice(name);
    List<Integer> gravity =
        advice.findings().stream()
            .map(f -> List.of(Severity.STOP, Severity.CAUTION, Severity.NOTE).indexOf(f.severity()))
            .toList();
    assertThat(gravity).isSorted();
    if (List.of(Verdict.DO_NOT_RUN, Verdict.RUN_WITH_CARE).contains(advice.verdict())) {
      // What happens with its number, and what to do; not the maxim of the card.
      Finding first = advice.findings().get(0);
      assertThat(advice.summary()).contains(first.message(), first.remedy());
    } else if (advice.verdict() == Verdict.NOT_JUDGED) {
      assertThat(advice.summary()).contains(advice.measureFirst().get(0));
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void itIsNeverRunWhileAStopOfAnyKindIsReported(String name) {
    Advice advice = advice(name);
    if (advice.findings().stream().anyMatch(f -> f.severity() == Severity.STOP)) {
      assertThat(advice.verdict()).isIn(Verdict.DO_NOT_RUN, Verdict.NOT_JUDGED);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void noMessageIsLeftWithAHoleInIt(String name) {
    assertThat(advice(name).findings())
        .allSatisfy(f -> assertThat(f.message()).doesNotContain("{").doesNotContain("}"));
  }

  @ParameterizedTest
  @MethodSource("names")
  void theScoreLiesBetweenNothingAndAHundredAndIsNoBetterThanItsWorstPart(String name) {
    Advice advice = advice(name);
    assertThat(advice.score()).isBetween(0, 100);
    assertThat(advice.subScores().values()).allMatch(part -> part >= advice.score());
  }
}
