package org.standproud.advice;

import java.util.Objects;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.language.Term;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Margin;
import org.standproud.rules.trace.Reading;
import org.standproud.setup.units.Dimension;
import org.standproud.setup.units.QuantityKind;

/** Formats the number that decides a card. */
public final class DecidingNumber {

  private DecidingNumber() {}

  /**
   * The unit of the facts of a dimension that a card reads.
   *
   * @param trace the outcome of the card
   * @param dimension the dimension of the number
   */
  public static QuantityKind kind(CardTrace trace, Dimension dimension) {
    return trace.conditions().stream()
        .flatMap(condition -> condition.read().stream())
        .map(Reading::fact)
        .map(Fact::number)
        .filter(Objects::nonNull)
        .map(Fact.Number::kind)
        .filter(kind -> kind.dimension() == dimension)
        .findFirst()
        .orElse(QuantityKind.of(dimension));
  }

  /**
   * The number in words, toward its bad side, formatted like a fact in the message, so that both
   * agree.
   *
   * @param trace the outcome of the card
   * @param margin the comparison that decides
   * @param wording formats numbers
   */
  public static String words(CardTrace trace, Margin margin, Wording wording) {
    Side bad = Side.ofLeft(margin);
    if (margin.compared().left() instanceof Term.Measured measured) {
      return wording.words(measured.fact(), new Value.Quantity(margin.left().sample()), bad);
    }
    Dimension dimension = margin.dimension() == null ? Dimension.NUMBER : margin.dimension();
    return wording.words(kind(trace, dimension), margin.left().band(), bad);
  }
}
