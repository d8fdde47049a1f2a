package org.standproud.advice.sensitivity;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Quantity;
import org.standproud.advice.Verdict;
import org.standproud.advice.Wording;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.Trials;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.Reading;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/**
 * What to measure first. Each unknown is set to each value it may have, the rest stays, and the
 * set-up is judged again. First come the unknowns on which the verdict depends, then those that
 * move the score most, then those that carry most of the uncertainty of the deciding fact.
 *
 * @param verdict the verdict with what is known now
 * @param score the score
 * @param deciding the fact that decides the most severe finding, with its band
 * @param questions the unknowns, most useful first
 */
public record SensitivityReport(
    Verdict verdict, int score, Quantity deciding, List<MeasurementSuggestion> questions) {

  /** Copies the list. */
  public SensitivityReport {
    questions = List.copyOf(questions);
  }

  /**
   * The questions for a set-up.
   *
   * @param setup the set-up
   * @param ruleBase the cards
   */
  public static SensitivityReport of(Setup setup, RuleBase ruleBase) {
    return of(setup, new Trials(ruleBase));
  }

  /**
   * The questions for a set-up.
   *
   * @param setup the set-up
   * @param trials judged set-ups
   */
  public static SensitivityReport of(Setup setup, Trials trials) {
    Judged base = trials.of(setup);
    Fact deciding = deciding(trials.ruleBase().evaluate(base.evidence()));
    List<MeasurementSuggestion> questions =
        Unknowns.of(setup, base.evidence()).stream()
            .map(unknown -> question(unknown, base, deciding, trials))
            .sorted(
                Comparator.comparing(
                        MeasurementSuggestion::changesVerdict, Comparator.reverseOrder())
                    .thenComparing(MeasurementSuggestion::spread, Comparator.reverseOrder())
                    .thenComparing(
                        q -> Optional.ofNullable(q.share()).orElse(0.0), Comparator.reverseOrder())
                    .thenComparing(q -> q.input().text()))
            .toList();
    return new SensitivityReport(
        base.verdict(),
        base.score(),
        new Wording(setup.units()).quantity(deciding, base.evidence().get(deciding)),
        questions);
  }

  /** The first number that is not exact in the gravest finding that reads one. */
  private static Fact deciding(RuleTrace trace) {
    return trace.findings().stream()
        .sorted(
            Comparator.comparing(CardTrace::severity, Comparator.reverseOrder())
                .thenComparing(finding -> finding.kind() == Kind.OPEN)
                .thenComparing(CardTrace::id))
        .flatMap(finding -> finding.conditions().stream())
        .flatMap(condition -> condition.read().stream())
        .filter(reading -> isBanded(reading.value()))
        .map(Reading::fact)
        .findFirst()
        .orElse(Vocabulary.HOLDING_MARGIN);
  }

  private static boolean isBanded(Value value) {
    return value instanceof Value.Quantity q && !q.band().isExact();
  }

  private static MeasurementSuggestion question(
      Unknown unknown, Judged base, Fact deciding, Trials trials) {
    List<MeasurementSuggestion.Outcome> answers =
        unknown.cases().stream()
            .map(
                c -> {
                  Judged then = trials.of(c.setup());
                  return new MeasurementSuggestion.Outcome(
                      c.value(), then.verdict(), then.score(), List.copyOf(then.stops()));
                })
            .toList();
    return new MeasurementSuggestion(
        unknown.input(),
        unknown.measure(),
        answers.stream().map(MeasurementSuggestion.Outcome::verdict).distinct().count() > 1,
        share(unknown.likely(), base, deciding, trials),
        answers);
  }

  private static @Nullable Double share(
      @Nullable Setup likely, Judged base, Fact deciding, Trials trials) {
    if (likely == null) {
      return null;
    }
    double before = badHalf(base, deciding);
    double after = badHalf(trials.of(likely), deciding);
    return before <= 0 ? 0 : Math.max(0, Math.min(1, 1 - after / before));
  }

  /** From the likely value to the bad end: below for a margin, above for anything else. */
  private static double badHalf(Judged judged, Fact fact) {
    if (judged.evidence().get(fact) instanceof Value.Quantity q) {
      Band band = q.band();
      return fact.name().endsWith("margin")
          ? band.likely() - band.low()
          : band.high() - band.likely();
    }
    return 0;
  }
}
