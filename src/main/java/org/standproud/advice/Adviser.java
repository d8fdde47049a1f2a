package org.standproud.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.standproud.mechanics.evidence.Assumption;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardOutcome;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.RuleKinds;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.UnitSystem;

/** Turns what the cards said of a set-up into advice. */
public final class Adviser {

  private static final Comparator<CardTrace> GRAVEST_FIRST =
      Comparator.comparing(CardTrace::severity, Comparator.reverseOrder())
          .thenComparing(card -> card.kind() == Kind.OPEN)
          .thenComparing(CardTrace::id);

  private static final Map<String, Fact> FACTS =
      Vocabulary.all().stream().collect(Collectors.toMap(Fact::name, Function.identity()));

  private Adviser() {}

  /**
   * The advice on a set-up.
   *
   * @param evidence the facts of the set-up
   * @param trace what every card said of them
   * @param units the caller's units
   */
  public static Advice advise(Evidence evidence, RuleTrace trace, UnitSystem units) {
    Wording wording = new Wording(units);
    FindingWriter writer = new FindingWriter(FACTS, evidence, wording);
    List<CardTrace> told = trace.findings().stream().sorted(GRAVEST_FIRST).toList();
    Verdict verdict = verdict(told, evidence);
    Score score = Score.of(told);
    List<Finding> findings = told.stream().map(writer::finding).toList();
    List<String> measure =
        told.stream()
            .flatMap(card -> MissingInputs.of(card, evidence).stream())
            .distinct()
            .toList();
    return new Advice(
        verdict.words(),
        summary(verdict, findings, measure),
        score.whole(),
        score.parts(),
        findings,
        measure,
        assumptions(evidence),
        evidence.values().stream().map(v -> wording.quantity(v.fact(), v.value())).toList(),
        Cautions.all());
  }

  /**
   * What to do with a set-up.
   *
   * @param findings the cards that have something to say
   * @param evidence the facts they were judged on
   */
  public static Verdict verdict(List<CardTrace> findings, Evidence evidence) {
    return verdict(findings, stop -> decides(stop, evidence));
  }

  /**
   * The same for a set-up that was judged without reasons.
   *
   * @param ruleBase what judged
   * @param kinds what it said
   * @param evidence the facts that were judged
   */
  public static Verdict verdict(RuleBase ruleBase, RuleKinds kinds, Evidence evidence) {
    return verdict(
        kinds.findings(),
        stop ->
            stop.truth() == Truth.TRUE
                || MissingInputs.of(ruleBase.reads(stop.id()), evidence).isEmpty());
  }

  /**
   * The same for findings in short.
   *
   * @param findings the cards that have something to say
   * @param decides whether a stop that fails speaks for itself, see {@link #decides}
   */
  public static <F extends CardOutcome> Verdict verdict(List<F> findings, Predicate<F> decides) {
    List<F> stops = findings.stream().filter(f -> f.severity() == Severity.STOP).toList();
    if (stops.stream().anyMatch(f -> f.kind() == Kind.FAIL && decides.test(f))) {
      return Verdict.DO_NOT_RUN;
    }
    if (!stops.isEmpty()) {
      return Verdict.NOT_JUDGED;
    }
    boolean care = findings.stream().anyMatch(f -> f.severity() == Severity.CAUTION);
    return care ? Verdict.RUN_WITH_CARE : Verdict.RUN;
  }

  /**
   * Whether a stop that fails is sure enough to speak for itself: it holds for every value of the
   * unknowns, or it may hold though all that the shop could tell was told. A stop that only may
   * hold because of something nobody told leaves the set-up not judged.
   */
  public static boolean decides(CardTrace stop, Evidence evidence) {
    return stop.truth() == Truth.TRUE || MissingInputs.of(stop, evidence).isEmpty();
  }

  private static String summary(Verdict verdict, List<Finding> findings, List<String> measure) {
    return switch (verdict) {
      case RUN -> "Run: no card stands against it.";
      case RUN_WITH_CARE -> "Run with care. " + findings.get(0).title() + ".";
      case DO_NOT_RUN -> "Do not run. " + findings.get(0).title() + ".";
      case NOT_JUDGED ->
          "Not judged, so not to be run. Measure or tell first: "
              + measure.stream().limit(2).collect(Collectors.joining("; "))
              + ".";
    };
  }

  private static List<String> assumptions(Evidence evidence) {
    return evidence.values().stream()
        .flatMap(value -> value.assumptions().stream())
        .distinct()
        .map(Adviser::told)
        .toList();
  }

  private static String told(Assumption assumption) {
    return assumption.input() + ": " + assumption.statement() + " (" + assumption.source() + ")";
  }
}
