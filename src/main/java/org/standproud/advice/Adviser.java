package org.standproud.advice;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.standproud.mechanics.Assumption;
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
    List<CardTrace> told = trace.findings().stream().sorted(Urgency.FIRST).toList();
    Verdict byCards = byCards(told);
    Verdict verdict = VerdictFloor.under(byCards, evidence, trace);
    boolean floor = verdict != byCards;
    Score score = Score.of(told, HoldReserve.of(evidence));
    List<Finding> findings = told.stream().map(writer::finding).toList();
    List<String> measure = measureFirst(told, evidence);
    return new Advice(
        verdict,
        floor ? floor(verdict, evidence) : summary(verdict, findings, measure),
        floor ? Math.min(score.whole(), VerdictFloor.mostScore(verdict)) : score.whole(),
        score.parts(),
        findings,
        measure,
        assumptions(evidence),
        evidence.values().stream().map(v -> wording.quantity(v.fact(), v.value())).toList(),
        Cautions.all());
  }

  /**
   * What to do with a set-up of which every card is known: never better than {@link VerdictFloor}
   * allows.
   *
   * @param trace what every card came to
   * @param evidence the facts they were judged on
   */
  public static Verdict verdict(RuleTrace trace, Evidence evidence) {
    return VerdictFloor.under(byCards(trace.findings()), evidence, trace);
  }

  /**
   * The same for a set-up that was judged without reasons.
   *
   * @param ruleBase what judged
   * @param kinds what every card came to
   * @param evidence the facts they were judged on
   */
  public static Verdict verdict(RuleBase ruleBase, RuleKinds kinds, Evidence evidence) {
    return VerdictFloor.under(byCards(kinds.findings()), evidence, ruleBase, kinds);
  }

  /**
   * The same from findings alone, which cannot show whether any stop judged the hold.
   *
   * @param findings the cards that have something to report
   * @param evidence the facts they were judged on
   */
  public static Verdict verdict(List<? extends CardOutcome> findings, Evidence evidence) {
    return VerdictFloor.under(byCards(findings), evidence);
  }

  /**
   * What the cards say: the one place where findings become a verdict. A stop that speaks decides,
   * whatever else is not known; a stop that something missing leaves open keeps the set-up from
   * being judged.
   */
  private static Verdict byCards(List<? extends CardOutcome> findings) {
    Verdict verdict = Verdict.RUN;
    for (CardOutcome finding : findings) {
      Verdict least =
          switch (finding.severity()) {
            case STOP -> finding.kind() == Kind.FAIL ? Verdict.DO_NOT_RUN : Verdict.NOT_JUDGED;
            case CAUTION -> Verdict.RUN_WITH_CARE;
            case NOTE -> Verdict.RUN;
          };
      verdict = least.compareTo(verdict) > 0 ? least : verdict;
    }
    return verdict;
  }

  /**
   * What to measure or state, for the first finding first. Where a stop speaks in every draw
   * nothing that could be measured would change the verdict, and nobody is sent for feelers.
   */
  private static List<String> measureFirst(List<CardTrace> told, Evidence evidence) {
    boolean sure =
        told.stream()
            .anyMatch(
                card ->
                    card.severity() == Severity.STOP
                        && card.kind() == Kind.FAIL
                        && card.truth() == Truth.TRUE);
    return sure
        ? List.of()
        : told.stream()
            .flatMap(card -> MissingInputs.of(card, evidence).stream())
            .distinct()
            .toList();
  }

  private static String summary(Verdict verdict, List<Finding> findings, List<String> measure) {
    return switch (verdict) {
      case RUN -> "OK to run. Nothing found against it.";
      case RUN_WITH_CARE -> "Run with care. " + first(findings);
      case DO_NOT_RUN -> "Do not run. " + first(findings);
      case NOT_JUDGED ->
          "Can't tell yet, so don't run. "
              + (measure.isEmpty()
                  ? first(findings)
                  : "Measure first: "
                      + measure.stream().limit(2).collect(Collectors.joining("; "))
                      + ".");
    };
  }

  /** What the first finding says with its number, and what to do. */
  private static String first(List<Finding> findings) {
    Finding first = findings.get(0);
    return first.message() + " " + first.remedy();
  }

  private static String floor(Verdict verdict, Evidence evidence) {
    String begins = verdict == Verdict.DO_NOT_RUN ? "Do not run. " : "Can't tell, so don't run. ";
    return begins + VerdictFloor.reason(evidence);
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
