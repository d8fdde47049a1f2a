package org.standproud.mechanics.holding.screw;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.Vise;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.request.ViseFields;

/**
 * The clamping force of a vise: as given, else from the torque on the screw, else from a practice
 * band of hand-crank torque; never more than the vise allows.
 *
 * @param forceN the force of one jaw on the stock in N, greater than zero
 * @param assumptions what was taken for what was not given
 */
public record ClampingForce(Band forceN, List<Assumption> assumptions) {

  /** Torque of a hand crank in N m: 60 to 100 (common practice, no source). */
  static final Band HAND_CRANK_TORQUE_NM = new Band(60, 80, 100);

  /** A worn or dirty screw gives half the force (common practice, no source). */
  static final double WORN_SCREW_FACTOR = 0.5;

  private static final double LEAST_FORCE_N = 1;

  /** What is taken for the pull of a hand on the handle. */
  public static final Assumption HAND_TORQUE =
      new Assumption(
          HoldFields.CLAMPING_FORCE,
          "the handle is pulled with 30 to 116 N.m in nine shops of ten, half of them under 60, and"
              + " three screws of ten are worn or dirty and lose up to half the force",
          "common practice, no source",
          "the torque on the handle of the vise, with a torque wrench");

  /** Copies the list. */
  public ClampingForce {
    assumptions = List.copyOf(assumptions);
  }

  /**
   * The clamping force on the stock.
   *
   * @param vise the vise, with its screw and the greatest force it allows
   * @param clampingForceN force in N if it is known
   * @param handleTorqueNm torque on the screw in N m if it is known
   * @throws OutsideValidity if a force or torque is not positive or out of range
   */
  public static ClampingForce of(
      Vise vise, @Nullable Band clampingForceN, @Nullable Band handleTorqueNm) {
    within("greatest clamping force", vise.greatestClampingForceN(), LEAST_FORCE_N, 1e6, "N");
    List<Assumption> assumptions = new ArrayList<>();
    Band force;
    if (clampingForceN != null) {
      force = clampingForceN;
    } else if (handleTorqueNm != null) {
      force = ScrewThread.forceN(vise.screw(), handleTorqueNm);
    } else {
      force = fromHandCrank(vise);
      assumptions.add(
          new Assumption(
              HoldFields.CLAMPING_FORCE,
              "hand crank torque taken as 60 to 100 N.m, and half the force at the low end for a"
                  + " worn or dirty screw",
              "common practice, no source",
              "the torque on the handle of the vise, with a torque wrench"));
    }
    within("clamping force", force.low(), LEAST_FORCE_N, 1e6, "N");
    within("clamping force", force.high(), LEAST_FORCE_N, 1e6, "N");
    return new ClampingForce(capped(force, vise, assumptions), assumptions);
  }

  private static Band fromHandCrank(Vise vise) {
    Band clean = ScrewThread.forceN(vise.screw(), HAND_CRANK_TORQUE_NM);
    return new Band(clean.low() * WORN_SCREW_FACTOR, clean.likely(), clean.high());
  }

  private static Band capped(Band force, Vise vise, List<Assumption> assumptions) {
    double greatest = vise.greatestClampingForceN();
    if (force.high() <= greatest) {
      return force;
    }
    assumptions.add(
        new Assumption(
            ViseFields.GREATEST_FORCE,
            "clamping force held to the greatest the vise allows",
            "the vise's own figure"));
    return force.map(f -> Math.min(f, greatest));
  }
}
