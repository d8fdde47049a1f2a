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

/** Turns the trace of a set-up into advice. */
public final class Adviser {

  private static final Map<String, Fact> FACTS =
      Vocabulary.all().stream().collect(Collectors.toMap(Fact::name, Function.identity()));

  private Adviser() {}

  /**
   * The advice on a set-up.
   *
   * @param evidence the facts of the set-up
   * @param trace the outcome of every card
   * @param units the caller's units
   */
  public static Advice advise(Evidence evidence, RuleTrace trace, UnitSystem units) {
    Wording wording = new Wording(units);
    FindingWriter writer = new FindingWriter(FACTS, evidence, wording);
    List<CardTrace> reported = trace.findings().stream().sorted(Urgency.FIRST).toList();
    Verdict byCards = byCards(reported);
    Verdict verdict = VerdictFloor.under(byCards, evidence, trace);
    boolean floor = verdict != byCards;
    Score score = Score.of(reported, HoldReserve.of(evidence));
    List<Finding> findings = reported.stream().map(writer::finding).toList();
    List<String> measure = measureFirst(reported, evidence);
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
   * The verdict from the outcome of every card: never better than {@link VerdictFloor} allows.
   *
   * @param trace the outcome of every card
   * @param evidence the facts judged
   */
  public static Verdict verdict(RuleTrace trace, Evidence evidence) {
    return VerdictFloor.under(byCards(trace.findings()), evidence, trace);
  }

  /**
   * The same for a set-up judged without reasons.
   *
   * @param ruleBase the rule base
   * @param kinds the outcome of every card
   * @param evidence the facts judged
   */
  public static Verdict verdict(RuleBase ruleBase, RuleKinds kinds, Evidence evidence) {
    return VerdictFloor.under(byCards(kinds.findings()), evidence, ruleBase, kinds);
  }

  /**
   * The same from findings alone, which cannot show whether any stop judged the hold.
   *
   * @param findings the cards with a finding
   * @param evidence the facts judged
   */
  public static Verdict verdict(List<? extends CardOutcome> findings, Evidence evidence) {
    return VerdictFloor.under(byCards(findings), evidence);
  }

  /**
   * The one place where findings become a verdict. A stop that fires decides, whatever else is not
   * known; a stop left open by a missing fact keeps the set-up from being judged.
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
   * What to measure or state, for the first finding first. If a stop fires in every draw, no
   * measurement would change the verdict, and none is suggested.
   */
  private static List<String> measureFirst(List<CardTrace> reported, Evidence evidence) {
    boolean sure =
        reported.stream()
            .anyMatch(
                card ->
                    card.severity() == Severity.STOP
                        && card.kind() == Kind.FAIL
                        && card.truth() == Truth.TRUE);
    return sure
        ? List.of()
        : reported.stream()
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

  /** The first finding with its number, and what to do. */
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
        .map(Adviser::words)
        .toList();
  }

  private static String words(Assumption assumption) {
    return assumption.input() + ": " + assumption.statement() + " (" + assumption.source() + ")";
  }
}
