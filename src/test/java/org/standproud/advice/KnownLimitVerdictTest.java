package org.standproud.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.card.Severity;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.Reading;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/**
 * Beyond a known limit of the mechanics: what a model refuses is missing from the evidence, the
 * cards that read it are open, and the set-up is never called good; where such a card is a stop,
 * nothing can be promised at best.
 */
class KnownLimitVerdictTest {

  private static Arguments limit(String beyond, Supplier<Setup> setup, Fact... refused) {
    return Arguments.of(Named.of(beyond, setup), List.of(refused));
  }

  private static SetupEditor good() {
    return SetupEditor.of(DemoShop.setup("01"));
  }

  static List<Arguments> limits() {
    return List.of(
        limit(
            "a chip beyond the law of the force",
            () -> good().feed(Band.exactly(2.5e-3)).done(),
            Vocabulary.HOLDING_MARGIN,
            Vocabulary.STABILITY_MARGIN),
        limit(
            "a run-out of more than 2 mm",
            () -> good().edges(null, 2.5e-3).done(),
            Vocabulary.CUTTER_STRENGTH_MARGIN,
            Vocabulary.HOLDING_MARGIN),
        limit(
            "a cutter that passes beside the stock",
            () -> good().offset(0.5).done(),
            Vocabulary.MODE,
            Vocabulary.HOLDING_MARGIN),
        limit(
            "friction over one",
            () -> good().clamping(Band.exactly(20e3), null, Band.exactly(1.2)).done(),
            Vocabulary.HOLDING_MARGIN),
        limit(
            "a spindle that stands still",
            () -> good().speed(0).done(),
            Vocabulary.STABILITY_MARGIN),
        limit(
            "a grip of half a millimetre",
            () -> good().grip(0.5e-3, List.of()).done(),
            Vocabulary.HOLDING_MARGIN,
            Vocabulary.EDGE_DEFLECTION));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("limits")
  void beyondALimitTheCardsThatReadWhatIsRefusedAreOpenAndItIsNotRun(
      Supplier<Setup> beyond, List<Fact> refused) {
    Evidence evidence = EvidenceGathering.of(beyond.get());
    RuleTrace trace = DemoShop.CARDS.evaluate(evidence);
    for (Fact fact : refused) {
      assertThat(evidence.get(fact)).as(fact.name()).isInstanceOf(Value.Missing.class);
      List<CardTrace> readers = trace.cards().stream().filter(c -> hangsOn(c, fact)).toList();
      assertThat(readers).as("cards that hang on " + fact.name()).isNotEmpty();
      assertThat(readers).extracting(CardTrace::kind).containsOnly(Kind.OPEN);
    }
    Verdict verdict = Adviser.verdict(trace.findings(), evidence);
    assertThat(verdict).isNotEqualTo(Verdict.RUN);
    if (trace.findings().stream().anyMatch(card -> card.severity() == Severity.STOP)) {
      assertThat(verdict).isIn(Verdict.NOT_JUDGED, Verdict.DO_NOT_RUN);
    }
  }

  /** Forces, grip and friction are behind stops: without them nothing can be promised. */
  @Test
  void withoutForceOrGripOrFrictionItIsNotJudgedAtBest() {
    List<Setup> beyond =
        List.of(
            good().feed(Band.exactly(2.5e-3)).done(),
            good().edges(null, 2.5e-3).done(),
            good().offset(0.5).done(),
            good().grip(0.5e-3, List.of()).done(),
            good().clamping(Band.exactly(20e3), null, Band.exactly(1.2)).done());
    for (Setup setup : beyond) {
      Evidence evidence = EvidenceGathering.of(setup);
      assertThat(Adviser.verdict(DemoShop.CARDS.evaluate(evidence).findings(), evidence))
          .isIn(Verdict.NOT_JUDGED, Verdict.DO_NOT_RUN);
    }
  }

  /**
   * Whether the outcome of a card hangs on a fact: it flags, is about this set-up, reads the fact
   * itself, and nothing else it asks has already settled that it does not hold.
   */
  private static boolean hangsOn(CardTrace card, Fact fact) {
    return card.card().flags()
        && card.kind() != Kind.NOT_APPLICABLE
        && card.conditions().stream().anyMatch(c -> reads(c, fact))
        && card.conditions().stream().noneMatch(c -> c.truth() == Truth.FALSE && !reads(c, fact));
  }

  private static boolean reads(ConditionTrace condition, Fact fact) {
    return condition.read().stream().map(Reading::fact).anyMatch(fact::equals);
  }
}
