package org.standproud.mechanics.tooltip;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;

/**
 * A length of constant diameter of a cutter or its holder.
 *
 * @param lengthM length, m, 0 to 1
 * @param diameterM bending diameter, m, 0.0005 to 0.5; of a fluted part 0.8 of the cutting diameter
 *     (Kops and Vo, CIRP Annals 39/1 (1990) 93-96), which also comes near its mass
 * @param youngPa Young's modulus, Pa, 10 to 1000 GPa
 * @param densityKgPerM3 density, kg/m3, 1000 to 20000
 * @param edgeMaterial whether it is of the material of the edges, whose modulus is drawn
 */
public record RoundPart(
    double lengthM, double diameterM, double youngPa, double densityKgPerM3, boolean edgeMaterial) {

  private static final double POISSON = 0.3;

  /** Cowper, J. Appl. Mech. 33 (1966) 335, for a solid round: 6 (1 + nu)/(7 + 6 nu). */
  private static final double SHEAR_COEFFICIENT = 6 * (1 + POISSON) / (7 + 6 * POISSON);

  /**
   * Refuses a part that is no piece of a tool.
   *
   * @throws OutsideValidity if a value is out of its range
   */
  public RoundPart {
    within("length of a part", lengthM, 0, 1, "m");
    within("diameter of a part", diameterM, 0.0005, 0.5, "m");
    within("Young's modulus", youngPa, 10e9, 1000e9, "Pa");
    within("density", densityKgPerM3, 1000, 20000, "kg/m3");
  }

  double bendingNm2() {
    return youngPa * secondMomentM4();
  }

  double shearN() {
    return SHEAR_COEFFICIENT * youngPa / (2 * (1 + POISSON)) * areaM2();
  }

  double massKgPerM() {
    return densityKgPerM3 * areaM2();
  }

  double inertiaKgM() {
    return densityKgPerM3 * secondMomentM4();
  }

  private double areaM2() {
    return Math.PI * diameterM * diameterM / 4;
  }

  private double secondMomentM4() {
    return Math.PI * Math.pow(diameterM, 4) / 64;
  }
}
