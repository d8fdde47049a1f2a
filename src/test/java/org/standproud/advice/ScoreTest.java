package org.standproud.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.card.Protects;
import org.standproud.rules.card.Severity;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;

/** The score falls with every finding and with every fact that gets worse. */
class ScoreTest {

  private static final HoldReserve SURE = new HoldReserve(Vocabulary.GREATEST_MARGIN);

  /** Facts of which less is worse. */
  private static final List<Fact> LESS_IS_WORSE =
      List.of(
          Vocabulary.SLIP_MARGIN,
          Vocabulary.LIFT_MARGIN,
          Vocabulary.TIP_MARGIN_FIXED,
          Vocabulary.TIP_MARGIN_MOVABLE,
          Vocabulary.NO_GAP_MARGIN,
          Vocabulary.HOLDING_MARGIN,
          Vocabulary.STABILITY_MARGIN,
          Vocabulary.CUTTER_STRENGTH_MARGIN,
          Vocabulary.POWER_MARGIN,
          Vocabulary.TORQUE_MARGIN,
          Vocabulary.CHIP_MARGIN,
          Vocabulary.TABLE_HOLD_MARGIN,
          Vocabulary.HEIGHT_CLEARANCE,
          Vocabulary.TRAVEL_CLEARANCE,
          Vocabulary.CONTACT_RATIO);

  /** Facts of which more is worse. */
  private static final List<Fact> MORE_IS_WORSE =
      List.of(
          Vocabulary.EDGE_DEFLECTION,
          Vocabulary.CUTTER_DEFLECTION,
          Vocabulary.SIZE_ERROR,
          Vocabulary.ROUGHNESS,
          Vocabulary.JAW_PRESSURE_RATIO,
          Vocabulary.CLAMP_BOW,
          Vocabulary.VIBRATION_AMPLITUDE,
          Vocabulary.UNSTOPPED_PUSH,
          Vocabulary.FIRST_CONTACT_FORCE,
          Vocabulary.PUSH_MOVABLE,
          Vocabulary.HIGH_SPOT,
          Vocabulary.SPEED_RATIO,
          Vocabulary.BITE_AFTER_LURCH);

  @Test
  void theTableForDevelopersIsWhatTheCodeLeaves() throws IOException {
    String page = Files.readString(Path.of("api-docs/scoring.md"));
    for (Severity severity : Severity.values()) {
      assertThat(page)
          .contains(
              String.format(
                  Locale.ROOT,
                  "| %s | %.2f | %.2f |",
                  severity.words(),
                  Score.share(Kind.FAIL, severity),
                  Score.share(Kind.OPEN, severity)));
    }
  }

  @Test
  void nothingFoundIsAHundredInAllAndInEveryPart() {
    Score score = Score.of(List.of(), SURE);
    assertThat(score.whole()).isEqualTo(100);
    assertThat(score.parts().values()).hasSize(Protects.values().length).containsOnly(100);
  }

  @Test
  void oneSureStopLeavesThirtyInTheWholeAndInItsPartOnly() {
    CardTrace stop = Findings.sure(Severity.STOP);
    Score score = Score.of(List.of(stop), SURE);
    assertThat(score.whole()).isEqualTo(30);
    score
        .parts()
        .forEach(
            (part, left) ->
                assertThat(left).isEqualTo(part.equals(stop.card().protects().words()) ? 30 : 100));
  }

  @Test
  void aGraverFindingLeavesLessAndAnOpenOneNoLessThanAFailedOne() {
    for (Kind kind : List.of(Kind.FAIL, Kind.OPEN)) {
      assertThat(Score.share(kind, Severity.STOP)).isLessThan(Score.share(kind, Severity.CAUTION));
      assertThat(Score.share(kind, Severity.CAUTION)).isLessThan(Score.share(kind, Severity.NOTE));
      assertThat(Score.share(kind, Severity.NOTE)).isLessThanOrEqualTo(1);
    }
    for (Severity severity : Severity.values()) {
      assertThat(Score.share(Kind.FAIL, severity))
          .isLessThanOrEqualTo(Score.share(Kind.OPEN, severity));
    }
  }

  @Test
  void theShareThatTheReserveLeavesRisesWithItAndHasThePublishedPlaces() {
    assertThat(new HoldReserve(0).share()).isEqualTo(0.5);
    assertThat(new HoldReserve(1).share()).isEqualTo(0.75);
    assertThat(new HoldReserve(3).share()).isEqualTo(0.95);
    double before = 0;
    for (double times = 0; times < 20; times += 0.01) {
      double share = new HoldReserve(times).share();
      assertThat(share).isGreaterThan(before).isLessThan(1);
      before = share;
    }
    assertThatIllegalArgumentException().isThrownBy(() -> new HoldReserve(-0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> new HoldReserve(Double.NaN));
  }

  @Test
  void theLeastOfTheReservesCounts() {
    Evidence evidence = EvidenceGathering.of(DemoShop.setup("01"));
    for (Fact fact :
        List.of(
            Vocabulary.HOLDING_MARGIN,
            Vocabulary.TIP_MARGIN_FIXED,
            Vocabulary.TIP_MARGIN_MOVABLE)) {
      Value small = new Value.Quantity(Sample.of(new double[] {0.01}));
      Evidence weak = evidence.with(List.of(new EvidenceValue(fact, small, List.of(), List.of())));
      assertThat(HoldReserve.of(weak).times()).isEqualTo(0.01);
    }
  }

  @Property(tries = 300)
  void anAddedFindingNeverRaisesAnyScoreAndTheOrderDoesNotMatter(@ForAll long seed) {
    Random random = new Random(seed);
    List<CardTrace> some = new ArrayList<>(Findings.everything());
    Collections.shuffle(some, random);
    int size = random.nextInt(12);
    List<CardTrace> few = new ArrayList<>(some.subList(0, size));
    List<CardTrace> more = new ArrayList<>(some.subList(0, size + 1));
    assertThat(Score.left(more)).isLessThanOrEqualTo(Score.left(few));
    Score after = Score.of(more, SURE);
    Score.of(few, SURE)
        .parts()
        .forEach((part, left) -> assertThat(after.parts().get(part)).isLessThanOrEqualTo(left));
    Collections.shuffle(more, random);
    assertThat(Score.of(more, SURE)).isEqualTo(after);
  }

  @Test
  void aFactThatGetsWorseNeverRaisesTheScoreAndSomewhereLowersIt() {
    List<String> neverLower = new ArrayList<>();
    List<Evidence> shop =
        DemoShop.names().stream().map(DemoShop::setup).map(EvidenceGathering::of).toList();
    LESS_IS_WORSE.forEach(fact -> worsen(shop, fact, true, neverLower));
    MORE_IS_WORSE.forEach(fact -> worsen(shop, fact, false, neverLower));
    assertThat(neverLower)
        .as("facts that no demonstration set-up holds as a number on which a verdict turns")
        .containsExactlyInAnyOrder(
            Vocabulary.SLIP_MARGIN.name(),
            Vocabulary.TABLE_HOLD_MARGIN.name(),
            Vocabulary.CONTACT_RATIO.name(),
            Vocabulary.CUTTER_DEFLECTION.name(),
            Vocabulary.HIGH_SPOT.name(),
            Vocabulary.BITE_AFTER_LURCH.name());
  }

  private static Sample scaled(Sample sample, double factor) {
    return Sample.of(
        IntStream.range(0, sample.size()).mapToDouble(i -> factor * sample.at(i)).toArray());
  }

  /** Shrinks or stretches a fact of every set-up, a little and far. */
  private static void worsen(
      List<Evidence> shop, Fact fact, boolean less, List<String> neverLower) {
    boolean lower = false;
    for (Evidence evidence : shop) {
      if (evidence.get(fact) instanceof Value.Quantity q && q.band().low() >= 0) {
        double before = left(evidence);
        for (double times : new double[] {1.01, 1.5, 5, 20, 500}) {
          Value worse = new Value.Quantity(scaled(q.sample(), less ? 1 / times : times));
          double after =
              left(evidence.with(List.of(new EvidenceValue(fact, worse, List.of(), List.of()))));
          assertThat(after).as("%s by %s", fact.name(), times).isLessThanOrEqualTo(before);
          lower |= after < before;
        }
      }
    }
    if (!lower) {
      neverLower.add(fact.name());
    }
  }

  private static double left(Evidence evidence) {
    return Score.left(DemoShop.CARDS.evaluate(evidence).findings(), HoldReserve.of(evidence));
  }
}
