package org.standproud.mechanics.engagement;

import org.standproud.mechanics.OutsideValidity;

/**
 * The length of one cutting edge in the stock and the entering angle that goes with it.
 *
 * <p>Straight edge: b = a_p / sin(kappa). With a corner radius r the foot of the edge is an arc: b
 * = r acos(1 - a_p/r) while a_p lies within the arc, else b = r kappa + (a_p - r(1 - cos kappa)) /
 * sin kappa. The effective entering angle is that of a straight edge of the same depth and length,
 * sin(kappa_e) = a_p / b, so that the chip section f_z a_p is kept: the mean chip of a corner is
 * thinner, and its thrust more axial, than KAPR says. (Geometry; own derivation.) The growth of the
 * cutting diameter up an edge with kappa below 90 degrees is left out.
 *
 * @param lengthM b in m
 * @param sine sin(kappa_e), over 0 to 1
 */
public record EdgeInCut(double lengthM, double sine) {

  /**
   * The edge in cut at a given depth.
   *
   * @param axialDepthM a_p in m, 1 um to 0.5 m
   * @param enteringAngleRad KAPR in rad, 5 to 90 degrees
   * @param cornerRadiusM RE in m, 0 to 50 mm
   * @throws OutsideValidity if an input is out of range
   */
  public static EdgeInCut of(double axialDepthM, double enteringAngleRad, double cornerRadiusM) {
    OutsideValidity.within("axial depth", axialDepthM, 1e-6, 0.5, "m");
    OutsideValidity.within(
        "entering angle", enteringAngleRad, Math.toRadians(5), Math.PI / 2 + 1e-9, "rad");
    OutsideValidity.within("corner radius", cornerRadiusM, 0, 0.05, "m");
    double arcHeightM = cornerRadiusM * (1 - Math.cos(enteringAngleRad));
    double lengthM =
        axialDepthM <= arcHeightM
            ? cornerRadiusM * Math.acos(1 - axialDepthM / cornerRadiusM)
            : cornerRadiusM * enteringAngleRad
                + (axialDepthM - arcHeightM) / Math.sin(enteringAngleRad);
    return new EdgeInCut(lengthM, Math.min(1, axialDepthM / lengthM));
  }

  /** cos(kappa_e), 0 to under 1. */
  public double cosine() {
    return Math.sqrt(Math.max(0, 1 - sine * sine));
  }
}
