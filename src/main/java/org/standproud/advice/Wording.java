package org.standproud.advice;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.setup.Band;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;

/**
 * Puts values into the caller's units and into words. Numbers are told to three figures in
 * sentences, to six elsewhere.
 */
public final class Wording {

  private static final MathContext TOLD = new MathContext(3);

  /** What is left of conversions, such as 55.00000000000001 mm, is not shown. */
  private static final MathContext SHOWN = new MathContext(6);

  private final UnitSystem units;

  /** Words for a caller who speaks in these units. */
  public Wording(UnitSystem units) {
    this.units = units;
  }

  /** The value of a fact in the caller's units. */
  public Quantity quantity(Fact fact, Value value) {
    String name = fact.name();
    if (value instanceof Value.Quantity number && fact.type() instanceof Fact.Number type) {
      return quantity(name, type.kind(), number.band());
    }
    if (value instanceof Value.Quantities) {
      return new Quantity(name, words(fact, value), null, null, null, null);
    }
    if (value instanceof Value.Text text) {
      return new Quantity(name, text.word(), null, null, null, null);
    }
    if (value instanceof Value.Truth truth) {
      return new Quantity(name, truth.yes(), null, null, null, null);
    }
    String measure = value instanceof Value.Missing missing ? missing.measure() : name;
    return new Quantity(name, null, null, null, null, measure);
  }

  /** A number with its band in the caller's units. */
  public Quantity quantity(String name, QuantityKind kind, Band band) {
    String unit = kind == QuantityKind.NUMBER ? null : kind.unit(units).code();
    double likely = shown(kind, band.likely());
    return band.isExact()
        ? new Quantity(name, likely, null, null, unit, null)
        : new Quantity(name, likely, shown(kind, band.low()), shown(kind, band.high()), unit, null);
  }

  /** The value of a fact in words: "12 mm", "18 to 24 kN", "rough", "not known". */
  public String words(Fact fact, Value value) {
    if (value instanceof Value.Quantity number && fact.type() instanceof Fact.Number type) {
      boolean atTheEnd = number.band().high() >= type.greatest() && type.greatest() > 0;
      return words(type.kind(), number.band()) + (atTheEnd ? " or more" : "");
    }
    if (value instanceof Value.Quantities list && fact.type() instanceof Fact.Numbers type) {
      return list.words(band -> words(type.each().kind(), band));
    }
    if (value instanceof Value.Text text) {
      return text.word();
    }
    if (value instanceof Value.Truth truth) {
      return truth.yes() ? "yes" : "no";
    }
    return "not known";
  }

  /** A number in words. */
  public String words(QuantityKind kind, double si) {
    return words(kind, Band.exactly(si));
  }

  /** A number with its band in words. */
  public String words(QuantityKind kind, Band band) {
    String low = told(kind.show(band.low(), units).value());
    String high = told(kind.show(band.high(), units).value());
    String number = low.equals(high) ? low : low + " to " + high;
    return kind == QuantityKind.NUMBER ? number : number + " " + kind.unit(units).code();
  }

  /** A number in the caller's units, to six figures. */
  public double shown(QuantityKind kind, double si) {
    return BigDecimal.valueOf(kind.show(si, units).value()).round(SHOWN).doubleValue();
  }

  private static String told(@Nullable Double number) {
    BigDecimal rounded = BigDecimal.valueOf(number == null ? 0 : number).round(TOLD);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
