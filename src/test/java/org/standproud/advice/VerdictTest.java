package org.standproud.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standproud.rules.card.Severity.CAUTION;
import static org.standproud.rules.card.Severity.NOTE;
import static org.standproud.rules.card.Severity.STOP;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.standproud.rules.trace.CardTrace;

/** The most severe finding decides, and what is not known never counts as good. */
class VerdictTest {

  private static Verdict verdict(CardTrace... findings) {
    return Adviser.verdict(List.of(findings), Findings.NOTHING);
  }

  @Test
  void aStopThatSurelyHoldsIsDoNotRunWhateverElseIsOpen() {
    assertThat(verdict(Findings.sure(STOP), Findings.open(STOP), Findings.sure(CAUTION)))
        .isEqualTo(Verdict.DO_NOT_RUN);
    assertThat(verdict(Findings.open(STOP), Findings.sure(STOP))).isEqualTo(Verdict.DO_NOT_RUN);
  }

  @Test
  void anOpenStopIsNotJudgedWhateverCautionsThereAre() {
    assertThat(verdict(Findings.open(STOP), Findings.sure(CAUTION))).isEqualTo(Verdict.NOT_JUDGED);
  }

  @Test
  void aCautionThatFailsOrIsOpenIsRunWithCare() {
    assertThat(verdict(Findings.sure(CAUTION), Findings.sure(NOTE)))
        .isEqualTo(Verdict.RUN_WITH_CARE);
    assertThat(verdict(Findings.open(CAUTION))).isEqualTo(Verdict.RUN_WITH_CARE);
  }

  @Test
  void notesAloneOrNothingIsRun() {
    assertThat(verdict(Findings.sure(NOTE))).isEqualTo(Verdict.RUN);
    assertThat(verdict()).isEqualTo(Verdict.RUN);
  }

  @Property(tries = 200)
  void itIsNeverRunWhileAStopFailsOrIsOpen(@ForAll long seed) {
    List<CardTrace> some = new ArrayList<>(Findings.everything());
    Collections.shuffle(some, new Random(seed));
    List<CardTrace> few = some.subList(0, 6);
    boolean stop = few.stream().anyMatch(f -> f.severity() == STOP);
    Verdict verdict = Adviser.verdict(few, Findings.NOTHING);
    if (stop) {
      assertThat(verdict).isIn(Verdict.DO_NOT_RUN, Verdict.NOT_JUDGED);
    } else {
      assertThat(verdict).isIn(Verdict.RUN, Verdict.RUN_WITH_CARE);
    }
  }

  @Test
  void aSetUpOfWhichNothingIsKnownIsNotJudged() {
    List<CardTrace> findings = DemoShop.CARDS.evaluate(Findings.NOTHING).findings();
    assertThat(Adviser.verdict(findings, Findings.NOTHING)).isEqualTo(Verdict.NOT_JUDGED);
  }
}
