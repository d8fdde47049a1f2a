package org.standproud.mechanics.holding.contact;

import static org.standproud.mechanics.OutsideValidity.within;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.StockSurface;

/**
 * How two pressed flat faces approach each other: {@code delta = c p^0.5}, delta in um, p in
 * kgf/cm2, c by the finish of the faces.
 *
 * <p>Source: Levina and Reshetov; Back, Burdekin and Cowley, 1973 (from memory; c about 0.3 to 0.6
 * for ground and scraped faces, about 1 and more for milled ones; the coarser values are a widening
 * of our own). Valid for mean pressure of 1 kPa to 1 GPa.
 */
public final class JointStiffness {

  private static final double KGF_PER_CM2_IN_PA = 98066.5;
  private static final double M_PER_UM = 1e-6;

  private JointStiffness() {}

  /**
   * Coefficient c of a gripped face, in um per root of kgf/cm2.
   *
   * @param surface condition of the face; null if not known
   */
  public static Band coefficient(@Nullable StockSurface surface) {
    if (surface == null) {
      return new Band(0.3, 1.0, 2.5);
    }
    return switch (surface) {
      case MACHINED -> new Band(0.3, 0.6, 1.0);
      case ROLLED -> new Band(0.6, 1.0, 1.5);
      case SAWN, CAST -> new Band(1.0, 1.5, 2.5);
    };
  }

  /**
   * Approach of the two faces in m.
   *
   * @param coefficient c, um per root of kgf/cm2
   * @param pressurePa mean pressure in Pa
   * @throws OutsideValidity if the pressure is out of range
   */
  public static double approachM(double coefficient, double pressurePa) {
    within("joint pressure", pressurePa, 1e3, 1e9, "Pa");
    within("joint coefficient", coefficient, 0.05, 10, "um/(kgf/cm2)^0.5");
    return coefficient * Math.sqrt(pressurePa / KGF_PER_CM2_IN_PA) * M_PER_UM;
  }

  /**
   * Slope of pressure against approach at that pressure, in Pa/m: {@code 2 p / delta}.
   *
   * @param coefficient c, um per root of kgf/cm2
   * @param pressurePa mean pressure in Pa
   * @throws OutsideValidity if the pressure is out of range
   */
  public static double stiffnessPaPerM(double coefficient, double pressurePa) {
    return 2 * pressurePa / approachM(coefficient, pressurePa);
  }
}
