package org.standproud.rules.impact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.Shop;
import org.standproud.rules.SmallCards;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.impact.ImpactReport.VerdictChange;
import org.standproud.rules.impact.PastJob.Found;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.RuleKinds;
import org.standproud.setup.Band;

class ImpactTest {

  private static final RuleBase NOW = SmallCards.ruleBase(SmallCards.tall("2.5"));

  private static Evidence plate(double stickOutM, Object gripM) {
    return Shop.evidence(
        Shop.STICK_OUT,
        stickOutM,
        Shop.GRIP_DEPTH,
        gripM,
        Shop.OPERATION,
        "broad side",
        Shop.STAGE,
        "rough",
        Shop.SLIP,
        2.0);
  }

  private static PastJob past(String record, Evidence evidence) {
    RuleKinds kinds = NOW.kinds(evidence);
    Map<String, Found> findings =
        kinds.findings().stream().collect(Collectors.toMap(CardKind::id, Found::of));
    return new PastJob(
        record,
        "job " + record,
        () -> evidence,
        SmallCards.VERDICT.of(NOW, kinds, evidence),
        findings);
  }

  private static ImpactReport impact(Map<String, String> files, PastJob... jobs) {
    return new Impact(SmallCards.VERDICT, 2)
        .of(SmallCards.ruleBase(files), () -> Stream.of(jobs), Impact.Progress.UNWATCHED);
  }

  @Test
  void theSameCardsChangeNothing() {
    ImpactReport report =
        impact(SmallCards.files(), past("1", plate(0.08, 0.02)), past("2", plate(0.02, 0.02)));
    assertThat(report.jobs()).isEqualTo(2);
    assertThat(report.complete()).isTrue();
    assertThat(report.changedVerdicts()).isZero();
    assertThat(report.byCard()).isEmpty();
  }

  @Test
  void aTighterLimitStopsJobsThatRan() {
    ImpactReport report =
        impact(
            SmallCards.tall("1.9"),
            past("1", plate(0.08, 0.02)),
            past("2", plate(0.04, 0.02)),
            past("3", plate(0.02, 0.02)));
    assertThat(report.verdicts()).containsExactly(Map.entry("run -> do not run", 1L));
    assertThat(report.changed())
        .containsExactly(new VerdictChange("2", "job 2", "run", "do not run"));
    assertThat(report.byCard().get("HOLD-001"))
        .isEqualTo(new ImpactReport.CardImpact(1, 0, 0, List.of("2")));
  }

  @Test
  void aCardTakenAwayVanishesFromItsJobs() {
    Map<String, String> files = SmallCards.files();
    files.remove(SmallCards.TALL);
    ImpactReport report = impact(files, past("1", plate(0.08, 0.02)), past("2", plate(0.02, 0.02)));
    assertThat(report.verdicts()).containsExactly(Map.entry("do not run -> run", 1L));
    assertThat(report.byCard().get("HOLD-001").vanishes()).isEqualTo(1);
  }

  @Test
  void aMilderCardChangesTheSeverityOfItsFinding() {
    Map<String, String> files = SmallCards.files();
    files.computeIfPresent(
        SmallCards.TALL, (f, t) -> t.replace("severity: stop", "severity: caution"));
    ImpactReport report = impact(files, past("1", plate(0.08, 0.02)));
    assertThat(report.byCard().get("HOLD-001").changes()).isEqualTo(1);
    assertThat(report.changedVerdicts()).isEqualTo(1);
  }

  @Test
  void anOpenFindingThatNowFailsIsAChange() {
    PastJob open =
        new PastJob(
            "1",
            null,
            () -> plate(0.08, 0.02),
            "not judged",
            Map.of("HOLD-001", new Found(Kind.OPEN, Severity.STOP)));
    ImpactReport report = impact(SmallCards.files(), open);
    assertThat(report.byCard().get("HOLD-001").changes()).isEqualTo(1);
    assertThat(report.verdicts()).containsOnlyKeys("not judged -> do not run");
  }

  @Test
  void evidenceThatNoLongerFitsTheVocabularyIsNamedAndTheRestIsJudged() {
    PastJob odd =
        new PastJob("odd", null, () -> Shop.evidence(Shop.STICK_OUT, "tall"), "run", Map.of());
    ImpactReport report = impact(SmallCards.files(), odd, past("2", plate(0.08, 0.02)));
    assertThat(report.unreadable()).containsExactly("odd");
    assertThat(report.jobs()).isEqualTo(2);
  }

  @Test
  void theReportDoesNotDependOnHowManyWorkersThereWere() {
    List<PastJob> jobs =
        IntStream.range(0, 700)
            .mapToObj(i -> past("r" + (1000 + i), plate(0.030 + i * 1e-4, 0.02)))
            .toList();
    RuleBase tighter = SmallCards.ruleBase(SmallCards.tall("1.9"));
    ImpactReport one =
        new Impact(SmallCards.VERDICT, 1).of(tighter, jobs::stream, Impact.Progress.UNWATCHED);
    ImpactReport four =
        new Impact(SmallCards.VERDICT, 4).of(tighter, jobs::stream, Impact.Progress.UNWATCHED);
    assertThat(four).isEqualTo(one);
    assertThat(one.changedVerdicts()).isPositive();
    assertThat(one.byCard().get("HOLD-001").records())
        .hasSize(ImpactReport.MOST_NAMED_A_CARD)
        .isSorted();
  }

  @Test
  void theWorkReportsItsProgressAndCanBeCancelled() {
    List<PastJob> jobs = Collections.nCopies(1000, past("1", plate(0.08, 0.02)));
    List<Long> reported = Collections.synchronizedList(new ArrayList<>());
    Impact.Progress progress =
        new Impact.Progress() {
          @Override
          public void done(long done) {
            reported.add(done);
          }

          @Override
          public boolean cancelled() {
            return reported.size() >= 2;
          }
        };
    ImpactReport report = new Impact(SmallCards.VERDICT, 2).of(NOW, jobs::stream, progress);
    assertThat(report.complete()).isFalse();
    assertThat(report.jobs()).isLessThan(1000);
    assertThat(reported).isSorted().hasSizeGreaterThanOrEqualTo(2);
  }

  @Test
  void anInterruptedCallerEndsTheWork() {
    List<PastJob> jobs = Collections.nCopies(5000, past("1", plate(0.08, 0.02)));
    Thread caller = Thread.currentThread();
    ImpactReport report =
        new Impact(SmallCards.VERDICT, 1).of(NOW, jobs::stream, done -> caller.interrupt());
    assertThat(Thread.interrupted()).isTrue();
    assertThat(report.complete()).isFalse();
  }

  @Test
  void aVerdictThatFailsFailsTheWork() {
    PastJob job = past("1", plate(0.08, 0.02));
    Impact impact =
        new Impact(
            (base, kinds, evidence) -> {
              throw new UnsupportedOperationException("no verdict");
            },
            2);
    assertThatThrownBy(() -> impact.of(NOW, () -> Stream.of(job), Impact.Progress.UNWATCHED))
        .hasRootCauseInstanceOf(UnsupportedOperationException.class);
  }

  @Test
  void theShortAnswerIsThatOfTheFullTrace() {
    for (double grip = 0.01; grip < 0.08; grip += 0.003) {
      for (String stage : List.of("rough", "finish")) {
        Evidence evidence =
            plate(0.08, new Band(grip, grip * 1.1, grip * 1.2))
                .with(
                    Shop.evidence(
                            Shop.STAGE,
                            stage,
                            Shop.SLIP,
                            4.0,
                            Shop.OPERATION,
                            "top edge",
                            Shop.STOP,
                            "none",
                            Shop.CUTTER,
                            0.01)
                        .values());
        assertThat(NOW.kinds(evidence).cards())
            .isEqualTo(NOW.evaluate(evidence).cards().stream().map(ImpactTest::inShort).toList());
      }
    }
  }

  private static CardKind inShort(CardTrace trace) {
    return new CardKind(
        trace.id(), trace.kind(), trace.draws(), trace.severity(), trace.isFinding());
  }
}
