package org.standproud.web.recorded;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.assessment.TraceDocument;
import org.standproud.assessment.TraceDocument.CardResult;
import org.standproud.assessment.TraceDocument.ConditionResult;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.Kind;
import org.standproud.setup.UnitSystem;
import org.standproud.web.drawing.DistanceBar;

/**
 * The recorded outcome of one card.
 *
 * @param id its id
 * @param title its claim
 * @param mark icon of its severity and kind
 * @param outcome its outcome, in words
 * @param severity its severity after all changes
 * @param because why it fired, passed or is open, in short
 * @param conditions outcome of each selector and condition
 * @param changes which card changed its severity, and why
 * @param turns values at which its result would change
 */
public record CardLine(
    String id,
    String title,
    String mark,
    Outcome outcome,
    String severity,
    String because,
    List<ConditionLine> conditions,
    List<String> changes,
    List<String> turns) {

  /** The outcomes of a card: SARIF 2.1.0 kinds in shop words. */
  public enum Outcome {
    /** It flags. */
    FAIL(Kind.FAIL, "flags it", "flag it"),
    /** A fact is missing. */
    OPEN(Kind.OPEN, "cannot tell", "cannot tell"),
    /** It passed. */
    PASS(Kind.PASS, "passed", "passed"),
    /** It is about other set-ups. */
    NOT_APPLICABLE(Kind.NOT_APPLICABLE, "does not apply", "do not apply"),
    /** It derives, eases or overrides, and flags nothing itself. */
    INFORMATIONAL(Kind.INFORMATIONAL, "is a helper rule", "helper rules");

    private final Kind kind;
    private final String ofOne;
    private final String ofMany;

    Outcome(Kind kind, String ofOne, String ofMany) {
      this.kind = kind;
      this.ofOne = ofOne;
      this.ofMany = ofMany;
    }

    /** Words for one card with this outcome. */
    public String words() {
      return ofOne;
    }

    /** Words for a number of cards with this outcome. */
    public String words(int cards) {
      return cards == 1 ? "1 " + ofOne : cards + " " + ofMany;
    }

    static Outcome of(Kind kind) {
      return Stream.of(values()).filter(o -> o.kind == kind).findFirst().orElseThrow();
    }
  }

  /**
   * The outcome of a condition.
   *
   * @param words the condition in words
   * @param truth whether it holds
   * @param facts the facts in it with their values
   */
  public record ConditionLine(String words, String truth, List<String> facts) {}

  /** Copies the lists. */
  public CardLine {
    conditions = List.copyOf(conditions);
    changes = List.copyOf(changes);
    turns = List.copyOf(turns);
  }

  /**
   * Describes a recorded result in the units of the answer.
   *
   * @param card the recorded result
   * @param units the units of the answer
   */
  public static CardLine of(CardResult card, UnitSystem units) {
    Outcome outcome = Outcome.of(card.kind());
    List<ConditionResult> all =
        Stream.concat(card.scope().stream(), card.conditions().stream()).toList();
    return new CardLine(
        card.card(),
        card.title(),
        card.severity() + (outcome == Outcome.OPEN ? "-open" : ""),
        outcome,
        card.severity().words(),
        because(outcome, all, units),
        all.stream().map(c -> line(c, units)).toList(),
        card.changes().stream().map(CardLine::change).toList(),
        turns(card.margin(), units));
  }

  private static String because(
      Outcome outcome, List<ConditionResult> conditions, UnitSystem units) {
    @Nullable Truth decides =
        switch (outcome) {
          case PASS, NOT_APPLICABLE -> Truth.FALSE;
          case OPEN -> Truth.UNKNOWN;
          case FAIL, INFORMATIONAL -> null;
        };
    return conditions.stream()
        .filter(c -> c.truth() == decides)
        .findFirst()
        .map(
            c ->
                decides == Truth.UNKNOWN
                    ? "not known: " + String.join("; ", c.unknown())
                    : "not true: " + c.words() + values(c, units))
        .orElse("");
  }

  private static String values(ConditionResult condition, UnitSystem units) {
    List<String> values = line(condition, units).facts();
    return values.isEmpty() ? "" : " (" + String.join(", ", values) + ")";
  }

  private static ConditionLine line(ConditionResult condition, UnitSystem units) {
    String truth =
        switch (condition.truth()) {
          case TRUE -> "holds";
          case FALSE -> "does not hold";
          case EITHER -> "may hold";
          case UNKNOWN -> "not known";
        };
    return new ConditionLine(
        condition.words(),
        truth,
        condition.facts().stream().map(f -> FactWords.of(f, units)).toList());
  }

  private static String change(TraceDocument.SeverityChange change) {
    return change.by()
        + (change.overrides() ? " sets it to a " : " eases it to a ")
        + change.to()
        + ": "
        + change.because();
  }

  private static List<String> turns(
      TraceDocument.@org.jspecify.annotations.Nullable Distance margin, UnitSystem units) {
    List<String> turns = new ArrayList<>();
    for (TraceDocument.Flip flip :
        margin == null ? List.<TraceDocument.Flip>of() : margin.flips()) {
      Double likely = flip.likely();
      if (likely != null) {
        turns.add(
            "with %s at %s instead of %s"
                .formatted(
                    flip.fact(),
                    DistanceBar.words(likely, flip.unit(), units),
                    DistanceBar.words(flip.from(), flip.unit(), units)));
      }
    }
    return turns;
  }
}
