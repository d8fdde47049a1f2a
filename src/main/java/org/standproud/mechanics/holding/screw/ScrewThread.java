package org.standproud.mechanics.holding.screw;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.ClampScrew;

/**
 * Torque and force of a power screw with a thrust collar.
 *
 * <p>Formula, with mean diameter {@code dm}, lead {@code l}, thread friction {@code f}, half thread
 * angle {@code a}, {@code F} the axial force, collar friction {@code fc} and collar diameter {@code
 * dc}, and {@code f' = f / cos a}:
 *
 * <pre>
 * tighten  T_R = F dm/2 (l + pi f' dm)/(pi dm - f' l) + F fc dc/2
 * loosen   T_L = F dm/2 (pi f' dm - l)/(pi dm + f' l) + F fc dc/2
 * efficiency e = F l / (2 pi T_R)
 * </pre>
 *
 * <p>Source: Shigley's Mechanical Engineering Design, chapter 8, power screws (from memory). Valid
 * where {@code pi dm > f' l}; friction 0 to 0.5, half angle 0 to 0.6 rad.
 *
 * @param meanDiameterM dm in m
 * @param leadM l in m
 * @param threadHalfAngleRad a in rad; zero for a square thread
 * @param threadFriction f, a pure number
 * @param collarDiameterM dc in m
 * @param collarFriction fc, a pure number
 */
public record ScrewThread(
    double meanDiameterM,
    double leadM,
    double threadHalfAngleRad,
    double threadFriction,
    double collarDiameterM,
    double collarFriction) {

  /**
   * Refuses a screw outside the range of the formula.
   *
   * @throws OutsideValidity if a dimension or a coefficient is out of range
   */
  public ScrewThread {
    within("mean thread diameter", meanDiameterM, 1e-3, 0.2, "m");
    within("thread lead", leadM, 1e-4, 2 * meanDiameterM, "m");
    within("thread half angle", threadHalfAngleRad, 0, 0.6, "rad");
    within("thread friction", threadFriction, 0, 0.5, "");
    within("collar diameter", collarDiameterM, 0, 0.5, "m");
    within("collar friction", collarFriction, 0, 0.5, "");
  }

  /** Torque in N m that raises the axial force to one newton. */
  public double tighteningTorquePerForceM() {
    double f = threadFriction / Math.cos(threadHalfAngleRad);
    double thread = (leadM + Math.PI * f * meanDiameterM) / (Math.PI * meanDiameterM - f * leadM);
    return meanDiameterM / 2 * thread + collarPerForceM();
  }

  /** Torque in N m that lets go an axial force of one newton; negative if it lets go by itself. */
  public double looseningTorquePerForceM() {
    double f = threadFriction / Math.cos(threadHalfAngleRad);
    double thread = (Math.PI * f * meanDiameterM - leadM) / (Math.PI * meanDiameterM + f * leadM);
    return meanDiameterM / 2 * thread + collarPerForceM();
  }

  /** The part of the torque in N m that the collar takes at one newton. */
  public double collarPerForceM() {
    return collarFriction * collarDiameterM / 2;
  }

  /** Work got out over work put in when tightening, 0 to 1. */
  public double efficiency() {
    return leadM / (2 * Math.PI * tighteningTorquePerForceM());
  }

  /**
   * Axial force of a screw whose friction is a band: least where torque is least and friction
   * greatest.
   *
   * @param screw the screw of the vise
   * @param torqueNm torque on the screw in N m, not negative
   * @return force in N
   * @throws OutsideValidity if the torque is negative or the screw is out of range
   */
  public static Band forceN(ClampScrew screw, Band torqueNm) {
    within("torque on the screw", torqueNm.low(), 0, 5000, "N.m");
    within("torque on the screw", torqueNm.high(), 0, 5000, "N.m");
    Band thread = screw.threadFriction();
    Band collar = screw.collarFriction();
    double low = of(screw, thread.high(), collar.high()).tighteningTorquePerForceM();
    double likely = of(screw, thread.likely(), collar.likely()).tighteningTorquePerForceM();
    double high = of(screw, thread.low(), collar.low()).tighteningTorquePerForceM();
    return new Band(torqueNm.low() / low, torqueNm.likely() / likely, torqueNm.high() / high);
  }

  /**
   * Clamping force of a screw in N at single values of friction and torque.
   *
   * @param screw the screw, whose bands of friction do not count
   * @param threadFriction friction of its thread
   * @param collarFriction friction of its collar
   * @param torqueNm torque in N m
   * @throws OutsideValidity if a value is out of range
   */
  public static double forceN(
      ClampScrew screw, double threadFriction, double collarFriction, double torqueNm) {
    within("torque on the screw", torqueNm, 0, 5000, "N.m");
    return torqueNm / of(screw, threadFriction, collarFriction).tighteningTorquePerForceM();
  }

  private static ScrewThread of(ClampScrew screw, double thread, double collar) {
    return new ScrewThread(
        screw.meanDiameterM(),
        screw.leadM(),
        screw.threadHalfAngleRad(),
        thread,
        screw.collarDiameterM(),
        collar);
  }
}
