package org.standproud.mechanics.cutter;

import java.util.List;
import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;

/**
 * A round cutter or arbor as a stepped beam built in at one end and loaded across at its tip.
 *
 * <p>delta = F / 3 x sum over the sections of (b^3 - a^3) / (E I), with a and b the distances of
 * the ends of the section from the tip, I = pi d^4 / 64; sigma = 32 F b / (pi d^3) at the root of a
 * section. For one section this is F L^3 / (3 E I), for two F / 3E (L1^3 / I1 + (L^3 - L1^3) / I2).
 * Elementary beam theory: shear is left out, which matters below a length of about two diameters.
 *
 * @param sections from the tip to the root, at least one
 */
public record SteppedCantilever(List<Section> sections) {

  /**
   * One length of constant diameter.
   *
   * @param lengthM its length in m, 0 to 1
   * @param diameterM its bending diameter in m, 0.0005 to 0.5
   * @param modulusPa Young's modulus in Pa, 10 to 1000 GPa
   */
  public record Section(double lengthM, double diameterM, double modulusPa) {
    /**
     * Refuses a section that is no piece of a tool.
     *
     * @throws OutsideValidity if a value is out of its range
     */
    public Section {
      OutsideValidity.within("length of a section", lengthM, 0, 1, "m");
      OutsideValidity.within("diameter of a section", diameterM, 0.0005, 0.5, "m");
      OutsideValidity.within("Young's modulus", modulusPa, 10e9, 1000e9, "Pa");
    }

    private double bendingStiffnessNm2() {
      return modulusPa * FastMath.PI * FastMath.pow(diameterM, 4) / 64;
    }
  }

  /**
   * Copies the sections.
   *
   * @throws OutsideValidity if they have no length between them
   */
  public SteppedCantilever {
    sections = List.copyOf(sections);
    double whole = sections.stream().mapToDouble(Section::lengthM).sum();
    OutsideValidity.within("length of a cutter", whole, 0.001, 1, "m");
  }

  /** Deflection of the tip under a unit force there in m/N. */
  public double complianceMPerN() {
    double sum = 0;
    double from = 0;
    for (Section section : sections) {
      double to = from + section.lengthM();
      sum += (cube(to) - cube(from)) / section.bendingStiffnessNm2();
      from = to;
    }
    return sum / 3;
  }

  /**
   * Deflection of the tip in m.
   *
   * @param forceN force across the tip in N, 0 to 1 MN
   * @throws OutsideValidity if the force is out of its range
   */
  public double deflectionM(double forceN) {
    return OutsideValidity.within("force on the cutter", forceN, 0, 1e6, "N") * complianceMPerN();
  }

  /**
   * Greatest bending stress in Pa, over the roots of all sections; the notch of a flute run-out or
   * a shoulder is not counted.
   *
   * @param forceN force across the tip in N, 0 to 1 MN
   * @throws OutsideValidity if the force is out of its range
   */
  public double bendingStressPa(double forceN) {
    OutsideValidity.within("force on the cutter", forceN, 0, 1e6, "N");
    double worst = 0;
    double from = 0;
    for (Section section : sections) {
      from += section.lengthM();
      worst = FastMath.max(worst, 32 * forceN * from / (FastMath.PI * cube(section.diameterM())));
    }
    return worst;
  }

  private static double cube(double x) {
    return x * x * x;
  }
}
