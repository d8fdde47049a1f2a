package org.standproud.setup.units;

import org.standproud.setup.UnitSystem;

/**
 * What kind of quantity a number is: its dimension, and the unit in which a shop writes that kind
 * in the metric and in the inch system. Finer than the dimension: a table feed and a cutting speed
 * are both lengths over time, and no shop gives both in one unit.
 */
public enum QuantityKind {
  /** Pure number. */
  NUMBER(Dimension.NUMBER, UnitCode.ONE, UnitCode.ONE),
  /** Length. */
  LENGTH(Dimension.LENGTH, UnitCode.MM, UnitCode.IN),
  /** Roughness of a surface. */
  ROUGHNESS(Dimension.LENGTH, UnitCode.UM, UnitCode.UIN),
  /** Plane angle. */
  ANGLE(Dimension.ANGLE, UnitCode.DEG, UnitCode.DEG),
  /** Force. */
  FORCE(Dimension.FORCE, UnitCode.N, UnitCode.LBF),
  /** Torque. */
  TORQUE(Dimension.TORQUE, UnitCode.N_M, UnitCode.LBF_FT),
  /** Stress, pressure, specific cutting force. */
  STRESS(Dimension.STRESS, UnitCode.MPA, UnitCode.KSI),
  /** Modulus of elasticity. */
  MODULUS(Dimension.STRESS, UnitCode.GPA, UnitCode.KSI),
  /** Power. */
  POWER(Dimension.POWER, UnitCode.KW, UnitCode.HP),
  /** Cutting speed. */
  CUTTING_SPEED(Dimension.SPEED, UnitCode.M_PER_MIN, UnitCode.FT_PER_MIN),
  /** Table feed. */
  TABLE_FEED(Dimension.SPEED, UnitCode.MM_PER_MIN, UnitCode.IN_PER_MIN),
  /** Spindle speed. */
  SPINDLE_SPEED(Dimension.FREQUENCY, UnitCode.RPM, UnitCode.RPM),
  /** Frequency of a vibration. */
  FREQUENCY(Dimension.FREQUENCY, UnitCode.HZ, UnitCode.HZ),
  /** Stiffness. */
  STIFFNESS(Dimension.STIFFNESS, UnitCode.N_PER_UM, UnitCode.LBF_PER_IN),
  /** Mass. */
  MASS(Dimension.MASS, UnitCode.KG, UnitCode.LB),
  /** Density. */
  DENSITY(Dimension.DENSITY, UnitCode.G_PER_CM3, UnitCode.LB_PER_IN3),
  /** Time. */
  TIME(Dimension.TIME, UnitCode.S, UnitCode.S);

  private final Dimension dimension;
  private final UnitCode metric;
  private final UnitCode inch;

  QuantityKind(Dimension dimension, UnitCode metric, UnitCode inch) {
    this.dimension = dimension;
    this.metric = metric;
    this.inch = inch;
  }

  /** The dimension. */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * The unit in which a caller writes and reads this kind.
   *
   * @param system the caller's system
   */
  public UnitCode unit(UnitSystem system) {
    return system == UnitSystem.INCH ? inch : metric;
  }

  /** The kind shown for a dimension when nothing finer is known. */
  public static QuantityKind of(Dimension dimension) {
    return switch (dimension) {
      case NUMBER -> NUMBER;
      case LENGTH -> LENGTH;
      case ANGLE -> ANGLE;
      case FORCE -> FORCE;
      case TORQUE -> TORQUE;
      case STRESS -> STRESS;
      case POWER -> POWER;
      case SPEED -> CUTTING_SPEED;
      case FREQUENCY -> FREQUENCY;
      case STIFFNESS -> STIFFNESS;
      case DENSITY -> DENSITY;
      case MASS -> MASS;
      case TIME -> TIME;
    };
  }

  /**
   * A number and its unit, as a caller reads it.
   *
   * @param value number in the unit
   * @param unit the unit
   */
  public record Shown(double value, UnitCode unit) {}

  /**
   * An SI value as a caller reads it.
   *
   * @param si value in the SI unit of the dimension
   * @param system the caller's system
   */
  public Shown show(double si, UnitSystem system) {
    UnitCode unit = unit(system);
    return new Shown(unit.fromSi(si), unit);
  }
}
