package org.standproud.advice;

import java.util.Objects;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Margin;
import org.standproud.rules.trace.Reading;
import org.standproud.setup.units.Dimension;
import org.standproud.setup.units.QuantityKind;

/** How the number that decides a card is told. */
public final class DecidingNumber {

  private DecidingNumber() {}

  /**
   * The unit in which the facts of a dimension are told that a card reads.
   *
   * @param trace what the card came to
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

  /** The value at the worst ends of the bands: as far past the threshold as the margin says. */
  public static double worst(Margin margin) {
    double side = margin.value() - margin.threshold();
    double toward = Math.signum(side) * Math.signum(margin.clearance());
    return margin.clearance() == 0
        ? margin.value()
        : margin.threshold() + toward * margin.adverse();
  }
}
