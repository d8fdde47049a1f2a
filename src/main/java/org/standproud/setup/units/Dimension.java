package org.standproud.setup.units;

/** The dimension of a number and the SI unit in which it is kept. */
public enum Dimension {
  /** A pure number. */
  NUMBER(""),
  /** Length. */
  LENGTH("m"),
  /** Plane angle. */
  ANGLE("rad"),
  /** Force. */
  FORCE("N"),
  /** Moment of a force. */
  TORQUE("N.m"),
  /** Stress, pressure, modulus. */
  STRESS("Pa"),
  /** Power. */
  POWER("W"),
  /** Cutting speed, table feed. */
  SPEED("m/s"),
  /** Spindle speed, natural frequency. */
  FREQUENCY("1/s"),
  /** Force per length of deflection. */
  STIFFNESS("N/m"),
  /** Mass per volume. */
  DENSITY("kg/m3"),
  /** Mass. */
  MASS("kg"),
  /** Time. */
  TIME("s");

  private final String siUnit;

  Dimension(String siUnit) {
    this.siUnit = siUnit;
  }

  /** UCUM code of the SI unit; empty for a pure number. */
  public String siUnit() {
    return siUnit;
  }
}
