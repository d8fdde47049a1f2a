package org.standproud.mechanics.plate;

import org.standproud.mechanics.OutsideValidity;

/**
 * A flat plate standing out of the jaws.
 *
 * @param stickOutM height above the jaws, m
 * @param lengthM length along the jaws, m
 * @param thicknessM thickness across the jaws, m
 * @param youngPa Young's modulus, Pa
 * @param poisson Poisson's ratio, 0 to 0.49
 * @param densityKgPerM3 density, kg/m3
 */
public record PlateGeometry(
    double stickOutM,
    double lengthM,
    double thicknessM,
    double youngPa,
    double poisson,
    double densityKgPerM3) {

  /** Longest plate the modes are computed for, as length over stick-out. */
  public static final double MAX_ASPECT = 60;

  /**
   * Refuses what is no plate.
   *
   * @throws OutsideValidity if a size is not between 0.1 mm and 10 m, length over stick-out is not
   *     in 0.05 to 60, or a property of the material is out of the range of metals and plastics
   */
  public PlateGeometry {
    OutsideValidity.within("stick-out", stickOutM, 1e-4, 10, "m");
    OutsideValidity.within("stock length", lengthM, 1e-4, 10, "m");
    OutsideValidity.within("stock thickness", thicknessM, 1e-4, 10, "m");
    OutsideValidity.within("length over stick-out", lengthM / stickOutM, 0.05, MAX_ASPECT, "");
    OutsideValidity.within("Young's modulus", youngPa, 1e8, 1e12, "Pa");
    OutsideValidity.within("Poisson's ratio", poisson, 0, 0.49, "");
    OutsideValidity.within("density", densityKgPerM3, 100, 25000, "kg/m3");
  }

  /** Bending stiffness {@code D = E h^3 / (12 (1 - nu^2))}, N.m. */
  public double bendingStiffnessNM() {
    return youngPa * Math.pow(thicknessM, 3) / (12 * (1 - poisson * poisson));
  }

  /** Mass of the part above the jaws, kg. */
  public double massKg() {
    return densityKgPerM3 * stickOutM * lengthM * thicknessM;
  }
}
