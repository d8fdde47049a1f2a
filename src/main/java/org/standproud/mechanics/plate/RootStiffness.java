package org.standproud.mechanics.plate;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;

/**
 * What holds the foot of a plate, seen at the jaw top and per metre of jaw: force across the stock
 * {@code q = shift w + coupling w'} and moment about the jaw top {@code m = coupling w + turn w'},
 * with w the shift of the foot and w' its turn, both positive toward the fixed jaw.
 *
 * <p>The coupling says where the foot turns: a rigid foot on an even layer turns about the middle
 * of the grip, not about the jaw top.
 *
 * @param shiftPa force per shift, N/m per m
 * @param couplingNPerM force per turn, and moment per shift, N per m; of either sign
 * @param turnN moment per turn, N.m/rad per m
 */
public record RootStiffness(double shiftPa, double couplingNPerM, double turnN) {

  /**
   * Refuses what does not hold a foot.
   *
   * @throws OutsideValidity if a stiffness is not positive and finite or the matrix is not positive
   *     definite
   */
  public RootStiffness {
    within("root shift stiffness", shiftPa, 1e-3, 1e22, "N/m per m");
    within("root turning stiffness", turnN, 1e-6, 1e22, "N.m/rad per m");
    within(
        "root coupling",
        Math.abs(couplingNPerM),
        0,
        Math.sqrt(shiftPa) * Math.sqrt(turnN) * (1 - 1e-13),
        "N per m");
  }

  private double determinant() {
    return shiftPa * turnN - couplingNPerM * couplingNPerM;
  }

  /** Shift per force, m2/N: the foot free to turn. */
  public double shiftCompliance() {
    return turnN / determinant();
  }

  /** Turn per moment, rad/N: the foot free to shift. */
  public double turnCompliance() {
    return shiftPa / determinant();
  }

  /** Shift per moment, and turn per force, m/N. */
  public double crossCompliance() {
    return -couplingNPerM / determinant();
  }

  /** Depth in m below the jaw top of the point about which a pure moment turns the foot. */
  public double turningDepthM() {
    return -couplingNPerM / shiftPa;
  }

  /**
   * The same root that gives more.
   *
   * @param factor how many times as far it gives, at least 1
   */
  public RootStiffness softened(double factor) {
    within("softening of the root", factor, 1, 1e9, "");
    return new RootStiffness(shiftPa / factor, couplingNPerM / factor, turnN / factor);
  }

  /**
   * The same root on jaws that give as a whole.
   *
   * @param shiftM2PerN shift of the jaws per force and metre of jaw, m2/N, not negative
   * @param turnPerN turn of the stock in them about the jaw top per moment and metre of jaw, rad/N,
   *     not negative
   */
  public RootStiffness onJaws(double shiftM2PerN, double turnPerN) {
    return ofCompliance(
        shiftCompliance() + shiftM2PerN, crossCompliance(), turnCompliance() + turnPerN);
  }

  /**
   * The root that turns about a depth below the jaw top.
   *
   * @param shift shift per force of the point about which it turns, m2/N
   * @param turn turn per moment, rad/N
   * @param depthM depth of that point below the jaw top, m
   */
  public static RootStiffness turningAbout(double shift, double turn, double depthM) {
    return ofCompliance(shift + turn * depthM * depthM, turn * depthM, turn);
  }

  /**
   * The root of a compliance.
   *
   * @param shift shift per force, m2/N
   * @param cross shift per moment, m/N
   * @param turn turn per moment, rad/N
   */
  public static RootStiffness ofCompliance(double shift, double cross, double turn) {
    double det = shift * turn - cross * cross;
    return new RootStiffness(turn / det, -cross / det, shift / det);
  }
}
