package org.standproud.advice;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.setup.Band;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;

/** Formats values in the caller's units. Sentences have three figures, everything else six. */
public final class Wording {

  private static final MathContext FIGURES = new MathContext(3);

  /** Hides rounding of conversions, such as 55.00000000000001 mm. */
  private static final MathContext SHOWN = new MathContext(6);

  private static final String LIKELY = "likely ";
  private static final String LETS_GO = ", or it lets go";

  private final UnitSystem units;

  /** Creates the formatter for a system of units. */
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

  /** The value of a fact in words: "12 mm", "likely 18 kN, could be 24", "rough", "not known". */
  public String words(Fact fact, Value value) {
    return words(fact, value, Side.BOTH);
  }

  /**
   * The value of a fact in words.
   *
   * @param fact the fact
   * @param value its value
   * @param bad its bad end: the bound is given on that side
   */
  public String words(Fact fact, Value value, Side bad) {
    if (value instanceof Value.Quantity number && fact.type() instanceof Fact.Number type) {
      String lets = number.sample().share() < 1 ? LETS_GO : "";
      return words(type, number.band(), bad) + lets;
    }
    if (value instanceof Value.Quantities list && fact.type() instanceof Fact.Numbers type) {
      return list.words(band -> words(type.each(), band, bad));
    }
    if (value instanceof Value.Text text) {
      return text.draws().isEmpty() ? text.word() : LIKELY + text.word();
    }
    if (value instanceof Value.Truth truth) {
      return (truth.draws().draws() == 1 ? "" : LIKELY) + (truth.yes() ? "yes" : "no");
    }
    return value instanceof Value.Missing missing && missing.letsGo() ? "lets go" : "not known";
  }

  /** The same inside a sentence: "likely 0.6 mm (could be 1.4)". */
  String inSentence(Fact fact, Value value, Side bad) {
    String alone = words(fact, value, bad);
    int aside = alone.startsWith(LIKELY) || alone.endsWith(LETS_GO) ? alone.indexOf(", ") : -1;
    return aside < 0 ? alone : alone.substring(0, aside) + " (" + alone.substring(aside + 2) + ")";
  }

  /** The upper bound of a fact stands for any larger value, and is never written as a number. */
  private String words(Fact.Number type, Band band, Side bad) {
    boolean endless = type.greatest() > 0 && band.likely() >= type.greatest();
    if (endless) {
      return bad == Side.LOW && band.low() < type.greatest()
          ? "likely very large, could be " + words(type.kind(), band.low())
          : "very large";
    }
    boolean cut = type.greatest() > 0 && band.high() >= type.greatest();
    if (cut && bad != Side.LOW) {
      return LIKELY + words(type.kind(), band.likely()) + ", could be very large";
    }
    return words(type.kind(), band, bad);
  }

  /** A number in words. */
  public String words(QuantityKind kind, double si) {
    return words(kind, Band.exactly(si));
  }

  /** A number with its bounds on either side, in words. */
  public String words(QuantityKind kind, Band band) {
    return words(kind, band, Side.BOTH);
  }

  /**
   * A number with its bound: "likely 0.6 mm, could be 1.4".
   *
   * @param kind its dimension and units
   * @param band 5th, 50th and 95th percentile
   * @param bad its bad end
   */
  public String words(QuantityKind kind, Band band, Side bad) {
    String low = figures(kind.show(band.low(), units).value());
    String high = figures(kind.show(band.high(), units).value());
    String likely = figures(kind.show(band.likely(), units).value());
    String unit = kind == QuantityKind.NUMBER ? "" : " " + kind.unit(units).code();
    String could =
        switch (bad) {
          case LOW -> low;
          case HIGH -> high;
          case BOTH -> low.equals(high) ? low : low + " to " + high;
        };
    return could.equals(likely) ? likely + unit : LIKELY + likely + unit + ", could be " + could;
  }

  /** A number in the caller's units, to six figures. */
  public double shown(QuantityKind kind, double si) {
    return BigDecimal.valueOf(kind.show(si, units).value()).round(SHOWN).doubleValue();
  }

  private static String figures(@Nullable Double number) {
    BigDecimal rounded = BigDecimal.valueOf(number == null ? 0 : number).round(FIGURES);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
