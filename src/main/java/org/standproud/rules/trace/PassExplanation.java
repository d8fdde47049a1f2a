package org.standproud.rules.trace;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.language.Truth;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.Dimension;
import org.standproud.setup.units.QuantityKind;

/**
 * Why a card passed: of the conditions that do not hold, the one nearest to holding, and its
 * distance.
 *
 * @param card id of the card
 * @param condition the condition in words
 * @param margin how far it is from holding, or null if no number can make it hold
 * @param others number of other conditions that do not hold
 * @param words the explanation in one sentence
 */
public record PassExplanation(
    String card, String condition, @Nullable Margin margin, int others, String words) {

  private static final MathContext FIGURES = new MathContext(3);

  /**
   * Why a card passed; if a judgement does not hold, why not, down to the condition of the card
   * that derives it.
   *
   * @param trace the trace of every card
   * @param card id of the card
   * @param units the units of numbers
   * @return empty if it did not pass
   * @throws IllegalArgumentException if there is no such card
   */
  public static Optional<PassExplanation> of(RuleTrace trace, String card, UnitSystem units) {
    return of(trace.card(card), units).map(why -> why.through(trace, units));
  }

  private PassExplanation through(RuleTrace trace, UnitSystem units) {
    return trace.cards().stream()
        .filter(c -> c.card().derives() != null && c.card().derives().text().equals(condition))
        .findFirst()
        .flatMap(deriving -> of(trace, deriving.id(), units))
        .map(deeper -> behind(deeper))
        .orElse(this);
  }

  private PassExplanation behind(PassExplanation deeper) {
    String tail = others == 0 ? "." : words.substring(words.indexOf("; " + others));
    return new PassExplanation(
        card,
        condition,
        deeper.margin,
        others,
        card + " passed because this does not hold: " + condition + tail + " " + deeper.words);
  }

  /**
   * Why a card passed, by its own conditions only.
   *
   * @param trace the trace of the card
   * @param units the units of numbers
   * @return empty if it did not pass
   */
  public static Optional<PassExplanation> of(CardTrace trace, UnitSystem units) {
    if (trace.kind() != Kind.PASS && trace.kind() != Kind.NOT_APPLICABLE) {
      return Optional.empty();
    }
    boolean scope = trace.kind() == Kind.NOT_APPLICABLE;
    List<ConditionTrace> quiet =
        (scope ? trace.scope() : trace.conditions())
            .stream().filter(c -> !c.draws().exceeds(trace.level())).toList();
    if (quiet.isEmpty() && !scope) {
      return Optional.of(together(trace));
    }
    return quiet.stream()
        .min(Comparator.comparingDouble(PassExplanation::distance))
        .map(c -> because(trace.id(), c, trace.level(), quiet.size() - 1, scope, units));
  }

  /** Each condition holds often enough, but not all at once. */
  private static PassExplanation together(CardTrace trace) {
    String all =
        trace.conditions().stream().map(ConditionTrace::words).collect(Collectors.joining(" and "));
    return new PassExplanation(
        trace.id(),
        all,
        trace.margin(),
        0,
        trace.id()
            + " passed because all of this is rarely true together: "
            + all
            + rarely(trace.share(), trace.level())
            + ".");
  }

  private static String rarely(double share, double level) {
    return " (in " + percent(share) + " of the draws; it fires above " + percent(level) + ")";
  }

  private static String percent(double share) {
    BigDecimal percent = BigDecimal.valueOf(100 * share).round(FIGURES);
    return (percent.signum() == 0 ? "0" : percent.stripTrailingZeros().toPlainString()) + " %";
  }

  private static double distance(ConditionTrace condition) {
    return condition.margin() == null ? Double.MAX_VALUE : condition.margin().relative();
  }

  private static PassExplanation because(
      String card,
      ConditionTrace condition,
      double level,
      int others,
      boolean scope,
      UnitSystem units) {
    StringBuilder words = new StringBuilder(card);
    words.append(scope ? " is about set-ups where " : " passed because this does not hold: ");
    words.append(condition.words());
    if (condition.truth() == Truth.EITHER) {
      words.append(rarely(condition.draws().share(), level));
    }
    if (condition.margin() == null) {
      words.append(readings(condition, units));
    } else {
      words.append(numbers(condition.margin(), units));
    }
    if (others > 0) {
      words
          .append("; ")
          .append(others)
          .append(others == 1 ? " other condition does" : " other conditions do");
      words.append(" not hold either");
    }
    return new PassExplanation(
        card, condition.words(), condition.margin(), others, words.append('.').toString());
  }

  private static String readings(ConditionTrace condition, UnitSystem units) {
    StringBuilder text = new StringBuilder();
    for (Reading reading : condition.read()) {
      text.append("; ").append(reading.fact().name()).append(" is ");
      text.append(words(reading.fact(), reading.value(), units));
    }
    return text.toString();
  }

  private static String numbers(Margin margin, UnitSystem units) {
    StringBuilder text = new StringBuilder(": ");
    text.append(words(margin.value(), margin.dimension(), units)).append(" against ");
    text.append(words(margin.threshold(), margin.dimension(), units));
    for (FactChange change : margin.changes()) {
      Double flips = change.certain() == null ? change.likely() : change.certain();
      if (flips != null) {
        Dimension dimension = dimension(change.fact());
        text.append("; it would hold with ").append(margin.of(change.fact())).append(" at ");
        text.append(words(flips, dimension, units)).append(" instead of ");
        text.append(words(change.from(), dimension, units));
      }
    }
    return text.toString();
  }

  private static @Nullable Dimension dimension(Fact fact) {
    Fact.Number number = fact.number();
    return number == null ? null : number.dimension();
  }

  private static String words(Fact fact, Value value, UnitSystem units) {
    if (value instanceof Value.Quantity q) {
      return words(q.band().likely(), dimension(fact), units);
    } else if (value instanceof Value.Quantities list) {
      return list.words(band -> words(band.likely(), dimension(fact), units));
    } else if (value instanceof Value.Text text) {
      return text.word();
    } else if (value instanceof Value.Truth truth) {
      return truth.yes() ? "true" : "false";
    }
    return "not known";
  }

  private static String words(double si, @Nullable Dimension dimension, UnitSystem units) {
    QuantityKind kind = QuantityKind.of(dimension == null ? Dimension.NUMBER : dimension);
    QuantityKind.Shown shown = kind.show(si, units);
    BigDecimal rounded = BigDecimal.valueOf(shown.value()).round(FIGURES);
    String number = rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    String unit = shown.unit().code();
    return unit.equals("1") || unit.isEmpty() ? number : number + " " + unit;
  }
}
