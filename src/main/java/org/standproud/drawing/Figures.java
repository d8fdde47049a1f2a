package org.standproud.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.standproud.setup.Band;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;
import org.standproud.setup.units.UnitCode;

/**
 * Numbers with their units on a drawing: lengths to the hundredth of a millimetre or the tenth of a
 * thousandth of an inch, which is as fine as a dial; everything else to three figures.
 *
 * @param units the units of the reader
 */
public record Figures(UnitSystem units) {

  private static final MathContext THREE = new MathContext(3);
  private static final double NOTHING = 1e-3;
  private static final int MM_PLACES = 2;
  private static final int INCH_PLACES = 4;

  /** A length in m as on a dial. */
  public String length(double metres) {
    UnitCode unit = QuantityKind.LENGTH.unit(units);
    int places = units == UnitSystem.INCH ? INCH_PLACES : MM_PLACES;
    BigDecimal value =
        BigDecimal.valueOf(unit.fromSi(metres)).setScale(places, RoundingMode.HALF_UP);
    return plain(value) + " " + sign(unit);
  }

  /** Any quantity in the SI unit of its dimension. */
  public String of(QuantityKind kind, double si) {
    UnitCode unit = kind.unit(units);
    String number = number(kind, si);
    return kind == QuantityKind.NUMBER ? number : number + " " + sign(unit);
  }

  /** A band, or one number where its ends read alike. */
  public String of(QuantityKind kind, Band si) {
    String low = of(kind, si.low());
    String high = of(kind, si.high());
    return low.equals(high) ? low : number(kind, si.low()) + " to " + high;
  }

  /** The number alone, to three figures; nearly zero is zero. */
  public String number(QuantityKind kind, double si) {
    double value = kind.unit(units).fromSi(si);
    return Math.abs(value) < NOTHING ? "0" : plain(BigDecimal.valueOf(value).round(THREE));
  }

  /** A deflection in m, which may be far smaller than a dial division. */
  public String deflection(double metres) {
    return of(QuantityKind.LENGTH, metres);
  }

  /** A unit as it is lettered on a drawing: micrometre and newton metre have their own signs. */
  static String sign(UnitCode unit) {
    return switch (unit) {
      case UM -> "\u00b5m";
      case N_M -> "N\u00b7m";
      case LBF_FT -> "lbf\u00b7ft";
      default -> unit.code();
    };
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
