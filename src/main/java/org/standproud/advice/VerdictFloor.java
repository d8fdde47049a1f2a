package org.standproud.advice;

import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.RuleKinds;
import org.standproud.rules.trace.RuleTrace;

/**
 * The best verdict allowed, whatever cards are in service. A set-up whose holding margin is below 1
 * up to its 95th percentile, which means less capacity than load in nearly every draw, is never
 * run; a set-up whose hold no stop in service judged is not judged. So a rule base without stops
 * never shows a set-up as safe.
 */
public final class VerdictFloor {

  /** Capacity over demand at which a hold lets go, by the definition of the margin. */
  private static final double LETS_GO = 1;

  private VerdictFloor() {}

  /**
   * The verdict, or a more severe one if the hold lets go in nearly every draw.
   *
   * @param byCards the verdict of the cards
   * @param evidence the facts judged
   */
  public static Verdict under(Verdict byCards, Evidence evidence) {
    return letsGo(evidence) ? Verdict.DO_NOT_RUN : byCards;
  }

  /**
   * The verdict, or a more severe one if the hold lets go in nearly every draw or no stop judged
   * it.
   *
   * @param byCards the verdict of the cards
   * @param evidence the facts judged
   * @param trace the outcome of every card
   */
  public static Verdict under(Verdict byCards, Evidence evidence, RuleTrace trace) {
    boolean judged =
        trace.cards().stream()
            .filter(card -> judges(card.card().flags(), card.card().severity(), card.kind()))
            .flatMap(card -> card.conditions().stream())
            .flatMap(condition -> condition.read().stream())
            .anyMatch(reading -> isHolding(reading.fact()));
    return under(judged ? byCards : gravest(byCards, Verdict.NOT_JUDGED), evidence);
  }

  /**
   * The same without reasons.
   *
   * @param byCards the verdict of the cards
   * @param evidence the facts judged
   * @param ruleBase the rule base
   * @param kinds the outcome of every card
   */
  public static Verdict under(
      Verdict byCards, Evidence evidence, RuleBase ruleBase, RuleKinds kinds) {
    boolean judged =
        kinds.cards().stream()
            .filter(
                card ->
                    judges(
                        ruleBase.card(card.id()).card().flags(),
                        ruleBase.card(card.id()).card().severity(),
                        card.kind()))
            .anyMatch(
                card ->
                    ruleBase.card(card.id()).facts().stream().anyMatch(VerdictFloor::isHolding));
    return under(judged ? byCards : gravest(byCards, Verdict.NOT_JUDGED), evidence);
  }

  /** Why a verdict is more severe than that of the cards, in one sentence. */
  static String reason(Evidence evidence) {
    return letsGo(evidence)
        ? "The hold bears less than the load in nearly every case of what is not known."
        : "No stop in the live rules judged whether the hold bears the load.";
  }

  /** The highest score under a verdict that the cards do not explain. */
  static int mostScore(Verdict verdict) {
    Kind kind = verdict == Verdict.DO_NOT_RUN ? Kind.FAIL : Kind.OPEN;
    return (int) Math.floor(100 * Score.share(kind, Severity.STOP));
  }

  private static boolean judges(boolean flags, Severity severity, Kind kind) {
    return flags && severity == Severity.STOP && kind != Kind.NOT_APPLICABLE;
  }

  private static boolean isHolding(Fact fact) {
    return fact.name().equals(Vocabulary.HOLDING_MARGIN.name());
  }

  private static boolean letsGo(Evidence evidence) {
    return evidence.values().stream()
        .filter(value -> isHolding(value.fact()))
        .anyMatch(value -> letsGo(value.value()));
  }

  private static boolean letsGo(Value margin) {
    return margin instanceof Value.Quantity q && q.band().high() < LETS_GO
        || margin instanceof Value.Missing missing && missing.letsGo();
  }

  private static Verdict gravest(Verdict a, Verdict b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
