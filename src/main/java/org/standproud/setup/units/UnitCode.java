package org.standproud.setup.units;

import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HERTZ;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.WATT;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import si.uom.NonSI;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.RationalNumber;

/**
 * A unit a caller may write. Codes are UCUM-like plain trade codes; the list is closed. Factors are
 * the library's: each unit is composed of its units and of the exact definitions of the inch
 * (0.0254 m), the pound (0.45359237 kg) and standard gravity (9.80665 m/s2) of the International
 * Yard and Pound Agreement of 1959 and the third General Conference on Weights and Measures of 1901
 * (from memory). The horsepower is the mechanical one, 550 ft.lbf/s.
 */
public enum UnitCode {
  /** Pure number. */
  ONE("1", Dimension.NUMBER, AbstractUnit.ONE),
  /** Hundredth. */
  PERCENT_OF_ONE("%", Dimension.NUMBER, PERCENT),
  /** Metre. */
  M("m", Dimension.LENGTH, METRE),
  /** Centimetre. */
  CM("cm", Dimension.LENGTH, MetricPrefix.CENTI(METRE)),
  /** Millimetre. */
  MM("mm", Dimension.LENGTH, MetricPrefix.MILLI(METRE)),
  /** Micrometre. */
  UM("um", Dimension.LENGTH, MetricPrefix.MICRO(METRE)),
  /** Inch. */
  IN("in", Dimension.LENGTH, Composed.INCH),
  /** Foot. */
  FT("ft", Dimension.LENGTH, Composed.FOOT),
  /** Thousandth of an inch. */
  THOU("thou", Dimension.LENGTH, Composed.INCH.divide(1000)),
  /** Millionth of an inch. */
  UIN("uin", Dimension.LENGTH, Composed.INCH.divide(1_000_000)),
  /** Newton. */
  N("N", Dimension.FORCE, NEWTON),
  /** Kilonewton. */
  KN("kN", Dimension.FORCE, MetricPrefix.KILO(NEWTON)),
  /** Pound-force. */
  LBF("lbf", Dimension.FORCE, Composed.POUND_FORCE),
  /** Kilogram-force. */
  KGF("kgf", Dimension.FORCE, KILOGRAM.multiply(Composed.GRAVITY)),
  /** Newton metre. */
  N_M("N.m", Dimension.TORQUE, NEWTON.multiply(METRE)),
  /** Pound-force foot. */
  LBF_FT("lbf.ft", Dimension.TORQUE, Composed.POUND_FORCE.multiply(Composed.FOOT)),
  /** Pound-force inch. */
  LBF_IN("lbf.in", Dimension.TORQUE, Composed.POUND_FORCE.multiply(Composed.INCH)),
  /** Pascal. */
  PA("Pa", Dimension.STRESS, PASCAL),
  /** Kilopascal. */
  KPA("kPa", Dimension.STRESS, MetricPrefix.KILO(PASCAL)),
  /** Megapascal. */
  MPA("MPa", Dimension.STRESS, MetricPrefix.MEGA(PASCAL)),
  /** Gigapascal. */
  GPA("GPa", Dimension.STRESS, MetricPrefix.GIGA(PASCAL)),
  /** Newton per square millimetre. */
  N_PER_MM2("N/mm2", Dimension.STRESS, NEWTON.divide(MetricPrefix.MILLI(METRE).pow(2))),
  /** Pound-force per square inch. */
  PSI("psi", Dimension.STRESS, Composed.PSI),
  /** Thousand pound-force per square inch. */
  KSI("ksi", Dimension.STRESS, Composed.PSI.multiply(1000)),
  /** Watt. */
  W("W", Dimension.POWER, WATT),
  /** Kilowatt. */
  KW("kW", Dimension.POWER, MetricPrefix.KILO(WATT)),
  /** Mechanical horsepower. */
  HP(
      "hp",
      Dimension.POWER,
      Composed.POUND_FORCE.multiply(Composed.FOOT).multiply(550).divide(SECOND)),
  /** Metre per second. */
  M_PER_S("m/s", Dimension.SPEED, METRE.divide(SECOND)),
  /** Millimetre per second. */
  MM_PER_S("mm/s", Dimension.SPEED, MetricPrefix.MILLI(METRE).divide(SECOND)),
  /** Millimetre per minute. */
  MM_PER_MIN("mm/min", Dimension.SPEED, MetricPrefix.MILLI(METRE).divide(MINUTE)),
  /** Metre per minute. */
  M_PER_MIN("m/min", Dimension.SPEED, METRE.divide(MINUTE)),
  /** Inch per minute. */
  IN_PER_MIN("in/min", Dimension.SPEED, Composed.INCH.divide(MINUTE)),
  /** Foot per minute. */
  FT_PER_MIN("ft/min", Dimension.SPEED, Composed.FOOT.divide(MINUTE)),
  /** Revolution per minute. */
  RPM("rpm", Dimension.FREQUENCY, AbstractUnit.ONE.divide(MINUTE)),
  /** Revolution per minute, the other spelling. */
  PER_MIN("1/min", Dimension.FREQUENCY, AbstractUnit.ONE.divide(MINUTE)),
  /** Hertz. */
  HZ("Hz", Dimension.FREQUENCY, HERTZ),
  /** Per second. */
  PER_S("1/s", Dimension.FREQUENCY, AbstractUnit.ONE.divide(SECOND)),
  /** Degree of arc. */
  DEG("deg", Dimension.ANGLE, NonSI.DEGREE_ANGLE),
  /** Radian. */
  RAD("rad", Dimension.ANGLE, RADIAN),
  /** Kilogram. */
  KG("kg", Dimension.MASS, KILOGRAM),
  /** Pound. */
  LB("lb", Dimension.MASS, Composed.POUND),
  /** Kilogram per cubic metre. */
  KG_PER_M3("kg/m3", Dimension.DENSITY, KILOGRAM.divide(METRE.pow(3))),
  /** Gram per cubic centimetre. */
  G_PER_CM3("g/cm3", Dimension.DENSITY, GRAM.divide(MetricPrefix.CENTI(METRE).pow(3))),
  /** Pound per cubic inch. */
  LB_PER_IN3("lb/in3", Dimension.DENSITY, Composed.POUND.divide(Composed.INCH.pow(3))),
  /** Newton per metre. */
  N_PER_M("N/m", Dimension.STIFFNESS, NEWTON.divide(METRE)),
  /** Newton per millimetre. */
  N_PER_MM("N/mm", Dimension.STIFFNESS, NEWTON.divide(MetricPrefix.MILLI(METRE))),
  /** Newton per micrometre. */
  N_PER_UM("N/um", Dimension.STIFFNESS, NEWTON.divide(MetricPrefix.MICRO(METRE))),
  /** Pound-force per inch. */
  LBF_PER_IN("lbf/in", Dimension.STIFFNESS, Composed.POUND_FORCE.divide(Composed.INCH)),
  /** Second. */
  S("s", Dimension.TIME, SECOND),
  /** Minute. */
  MIN("min", Dimension.TIME, MINUTE);

  private static final Map<String, UnitCode> BY_CODE = new LinkedHashMap<>();

  static {
    for (UnitCode unit : values()) {
      BY_CODE.put(unit.code, unit);
    }
  }

  private final String code;
  private final Dimension dimension;
  private final double numerator;
  private final double denominator;

  UnitCode(String code, Dimension dimension, Unit<?> unit) {
    this.code = code;
    this.dimension = dimension;
    Number factor = factorToSi(unit);
    if (factor instanceof RationalNumber rational && isExact(rational)) {
      this.numerator = rational.getDividend().doubleValue();
      this.denominator = rational.getDivisor().doubleValue();
    } else {
      this.numerator = factor.doubleValue();
      this.denominator = 1;
    }
  }

  /** The code as written in requests and answers. */
  public String code() {
    return code;
  }

  /** What is measured in this unit. */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * The SI value of a number in this unit. May be infinite if the number is near the greatest
   * double.
   *
   * @param value number in this unit
   */
  public double toSi(double value) {
    return value * numerator / denominator;
  }

  /**
   * The number in this unit of an SI value.
   *
   * @param si value in the SI unit of the dimension
   */
  public double fromSi(double si) {
    return si * denominator / numerator;
  }

  /**
   * The unit of a code; empty if the code is not on the list. Case counts: {@code N} is not {@code
   * n}.
   */
  public static Optional<UnitCode> of(String code) {
    return Optional.ofNullable(BY_CODE.get(code));
  }

  /** The codes that measure a dimension, in the order of the list. */
  public static List<String> codesOf(Dimension dimension) {
    return Arrays.stream(values())
        .filter(u -> u.dimension == dimension)
        .map(UnitCode::code)
        .toList();
  }

  /**
   * Asks the library. Its system unit of frequency, angle and the like is commensurable with that
   * of {@link Dimension}, so only the factor is left to ask for.
   */
  private static Number factorToSi(Unit<?> unit) {
    try {
      return unit.getConverterToAny(unit.getSystemUnit()).convert((Number) 1);
    } catch (IncommensurableException e) {
      throw new IllegalStateException("a unit that its own system unit does not measure", e);
    }
  }

  /** Whether both parts of a ratio are whole numbers that a double holds exactly. */
  private static boolean isExact(RationalNumber rational) {
    BigInteger limit = BigInteger.ONE.shiftLeft(53);
    return rational.getDividend().abs().compareTo(limit) <= 0
        && rational.getDivisor().compareTo(limit) <= 0;
  }

  /** Units that the library lacks, of those it has. */
  private static final class Composed {
    static final Unit<?> INCH = METRE.multiply(254).divide(10_000);
    static final Unit<?> FOOT = INCH.multiply(12);
    static final Unit<?> POUND = KILOGRAM.multiply(45_359_237).divide(100_000_000);
    static final Unit<?> GRAVITY = METRE_PER_SQUARE_SECOND.multiply(980_665).divide(100_000);
    static final Unit<?> POUND_FORCE = POUND.multiply(GRAVITY);
    static final Unit<?> PSI = POUND_FORCE.divide(INCH.pow(2));

    private Composed() {}
  }
}
