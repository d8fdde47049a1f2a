package org.standproud.mechanics.holding.contact;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;

/**
 * An elastic cylinder pressed on a flat along its length (Hertz).
 *
 * <p>Formula, with {@code p} force per length, {@code R} radius and {@code 1/E' = sum (1-nu^2)/E}:
 * half width {@code b = sqrt(4 p R/(pi E'))}, peak pressure {@code pmax = sqrt(p E'/(pi R)) =
 * 2p/(pi b)}. Between two flats the cylinder shortens across its diameter by {@code 2 p
 * (1-nu^2)/(pi E) (2 ln(4R/b) - 1)}.
 *
 * <p>Source: Johnson, Contact Mechanics, 1985, chapter 4 and eq. 5.57 (the last from memory). Valid
 * while elastic: yield begins near {@code pmax = 1.79 Y} (from memory); beyond that the figures are
 * bounds only and the cylinder flows flat.
 *
 * @param forcePerLengthNPerM p in N/m, 1 to 1e8
 * @param radiusM R in m
 * @param contactModulusPa E' in Pa
 */
public record LineContact(double forcePerLengthNPerM, double radiusM, double contactModulusPa) {

  /** Peak pressure over yield stress at which yield begins under a line contact. */
  public static final double YIELD_ONSET = 1.79;

  /**
   * Refuses values outside the range of the formula.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public LineContact {
    within("force per length of a line contact", forcePerLengthNPerM, 1, 1e8, "N/m");
    within("radius of a line contact", radiusM, 1e-5, 0.1, "m");
    within("contact modulus", contactModulusPa, 1e6, 1e12, "Pa");
  }

  /**
   * E' of two bodies in Pa.
   *
   * @param youngs1Pa Young's modulus of the first body in Pa
   * @param poisson1 Poisson's ratio of the first body
   * @param youngs2Pa Young's modulus of the second body in Pa
   * @param poisson2 Poisson's ratio of the second body
   */
  public static double contactModulusPa(
      double youngs1Pa, double poisson1, double youngs2Pa, double poisson2) {
    return 1 / ((1 - poisson1 * poisson1) / youngs1Pa + (1 - poisson2 * poisson2) / youngs2Pa);
  }

  /** Half of the width of the contact in m. */
  public double halfWidthM() {
    return Math.sqrt(4 * forcePerLengthNPerM * radiusM / (Math.PI * contactModulusPa));
  }

  /** Pressure in Pa in the middle of the contact. */
  public double peakPressurePa() {
    return Math.sqrt(forcePerLengthNPerM * contactModulusPa / (Math.PI * radiusM));
  }

  /**
   * Shortening of the cylinder's diameter in m when it lies between two such flats.
   *
   * @param youngsPa Young's modulus of the cylinder in Pa
   * @param poisson Poisson's ratio of the cylinder
   */
  public double diametralCompressionM(double youngsPa, double poisson) {
    double slope = 2 * forcePerLengthNPerM * (1 - poisson * poisson) / (Math.PI * youngsPa);
    return slope * (2 * Math.log(4 * radiusM / halfWidthM()) - 1);
  }

  /**
   * Peak pressure over the pressure at which yield begins; above one the softer body flows.
   *
   * @param yieldPa yield stress of the softer body in Pa
   */
  public double yieldRatio(double yieldPa) {
    return peakPressurePa() / (YIELD_ONSET * yieldPa);
  }
}
