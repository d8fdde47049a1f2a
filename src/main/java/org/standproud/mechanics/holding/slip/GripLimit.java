package org.standproud.mechanics.holding.slip;

import org.standproud.mechanics.holding.jaw.BackingHold;
import org.standproud.mechanics.holding.jaw.Bearing;

/**
 * The greatest multiple of one force that two jaws take: a lower bound of three-dimensional limit
 * analysis with Coulomb friction, from a distribution of pressure and friction that is in balance
 * and nowhere over its limit; own model.
 *
 * <p>The force {@code F = m f} acts at {@code (x, y, H)}, x along the jaws from their middle, H
 * above their top, y up to half the thickness t off the middle.
 *
 * <ul>
 *   <li>Normal forces: the movable jaw keeps {@code N - s Fy} under a push toward the fixed jaw and
 *       N under one away from it; the fixed jaw bears that and Fy. S is their sum.
 *   <li>Yaw: {@code |x Fy| + |t/2 Fx|} shifts the fixed jaw's resultant along the jaws by e; its
 *       pressure is even over {@code L' = L - 2e}. The movable jaw bears evenly.
 *   <li>Tip: {@code H |Fy| + t/2 |Fz|} is taken by the depths of the two resultants within their
 *       bearings, up to the rigid limit; beyond that by a couple of vertical friction q on the two
 *       faces, {@code q t}.
 *   <li>A backing above the jaws takes what is left of the moment, up to what it withstands, before
 *       the couple does; its push Q comes off what the fixed jaw bears and adds {@code Q |xb|} to
 *       yaw.
 *   <li>Friction: {@code Fx^2 + (|Fz| + 2 q)^2 + (My/a)^2 <= (mu S)^2}, the ellipsoid of Howe and
 *       Cutkosky (Int. J. Robotics Research 15 (1996) 557, from memory) with {@code a = sqrt(L'^2 +
 *       g^2)/4}, no more than the mean distance of a rectangle from its middle.
 *   <li>Pitch: {@code My = |Fx| (H + g/2) + |x Fz|}, the signs as at the worse end.
 *   <li>A seat takes a downward force; against pitch it pushes up at the end of the contact and the
 *       friction is even: {@code a = L'/2}. A stop takes the push toward its side, not its pitch.
 * </ul>
 *
 * @param clampingForceN N in N
 * @param friction mu of the weaker face
 * @param lossShare s
 * @param heightM H in m
 * @param placeM x in m, not negative
 * @param thicknessM t in m
 * @param gripM g in m
 * @param lengthM L in m
 * @param movable where the movable jaw may bear
 * @param fixed where the fixed jaw may bear
 * @param seated whether the underside sits on something
 * @param stopPlusX whether a stop takes a push toward +X
 * @param stopMinusX whether a stop takes a push toward -X
 * @param behind what stands behind the stock on the side of the fixed jaw
 * @param before what stands before it on the side of the movable jaw
 */
public record GripLimit(
    double clampingForceN,
    double friction,
    double lossShare,
    double heightM,
    double placeM,
    double thicknessM,
    double gripM,
    double lengthM,
    Bearing movable,
    Bearing fixed,
    boolean seated,
    boolean stopPlusX,
    boolean stopMinusX,
    BackingHold behind,
    BackingHold before) {

  private static final int HALVINGS = 40;
  private static final double NEAR = 1e-4;

  /**
   * The greatest factor on a force, at most {@link Margin#GREATEST}; nothing if the bearings hold
   * no push that way.
   *
   * @param fx along the jaws in N
   * @param fy across the stock in N, positive toward the fixed jaw
   * @param fz upright in N, positive out of the jaws
   */
  public double margin(double fx, double fy, double fz) {
    return margin(fx, fy, fz, Margin.GREATEST);
  }

  /**
   * The same, or the bound if the force is taken that many times.
   *
   * @param fx along the jaws in N
   * @param fy across the stock in N
   * @param fz upright in N
   * @param bound over zero
   */
  public double margin(double fx, double fy, double fz, double bound) {
    if (holds(fx, fy, fz, bound)) {
      return bound;
    }
    double low = 0;
    double high = bound;
    for (int i = 0; i < HALVINGS && high - low > NEAR * high; i++) {
      double middle = low > 0.1 * high ? (low + high) / 2 : Math.max(low, high / 8);
      if (middle == low) {
        middle = (low + high) / 2;
      }
      if (holds(fx, fy, fz, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private boolean holds(double fx, double fy, double fz, double m) {
    double across = m * fy;
    double left = clampingForceN - lossShare * Math.max(0, across);
    double borne = left + across;
    if (left <= 0 || borne <= 0) {
      return false;
    }
    BackingHold backing = across >= 0 ? behind : before;
    double along = m * Math.abs(fx);
    boolean down = seated && fz < 0;
    double upright = down ? 0 : m * Math.abs(fz);
    double tipNm = heightM * Math.abs(across) + thicknessM / 2 * upright;
    double takenNm =
        across >= 0
            ? left * movable.deepestM() - borne * fixed.shallowestM()
            : borne * fixed.deepestM() - left * movable.shallowestM();
    double backedNm = Math.min(backing.momentNm(), Math.max(0, tipNm - takenNm));
    double backedN = backedNm > 0 ? backedNm * backing.forceN() / backing.momentNm() : 0;
    double couple = tipNm > takenNm ? (tipNm - takenNm - backedNm) / thicknessM : 0;
    // Away from the fixed jaw a backing would press the stock on it harder: not counted.
    borne -= across >= 0 ? backedN : 0;
    if (borne <= 0) {
      return false;
    }
    double yawNm = placeM * Math.abs(across) + thicknessM / 2 * along + backedN * backing.placeM();
    // The length in contact times what the fixed jaw bears, which spares a division.
    double length = lengthM * borne - 2 * yawNm;
    if (length <= 0) {
      return false;
    }
    double overhang = down ? m * -fz * Math.max(0, placeM - lengthM / 2) : 0;
    double pitchNm = (heightM + gripM / 2) * along + placeM * upright + overhang;
    double slipping = (fx > 0 ? stopPlusX : stopMinusX) ? 0 : along;
    double vertical = upright + 2 * couple;
    double limit = friction * (left + borne);
    double grip = gripM * borne;
    // The square of four arms times what the fixed jaw bears, and of four pitches times the same.
    double arms = seated ? 4 * length * length : length * length + grip * grip;
    double pitches = 16 * pitchNm * pitchNm * borne * borne;
    return pitches <= (limit * limit - slipping * slipping - vertical * vertical) * arms;
  }
}
