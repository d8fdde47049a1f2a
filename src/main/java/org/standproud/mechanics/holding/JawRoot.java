package org.standproud.mechanics.holding;

import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.holding.contact.ElasticRoot;
import org.standproud.mechanics.holding.contact.JointStiffness;
import org.standproud.mechanics.holding.jaw.JawBearings;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;

/**
 * The elastic root of one set of values: joint, whole-face packing and jaw body in series.
 *
 * <p>A jaw of stiffness K at its top, height h, is taken to tilt about its foot with {@code K h^2};
 * its layer is softened so that {@code k L g^3/12} is the series of both.
 *
 * @param hold the hold
 * @param jointCoefficient c of the joint law
 * @param packingEnd end of the band of Young's modulus taken for whole-face packing
 * @param fixedJawNPerM stiffness of the fixed jaw in N/m
 * @param movableJawNPerM stiffness of the movable jaw in N/m
 * @param lengthM jaw contact length in m
 * @param gripM gripped height in m
 * @param clampingForceN clamping force in N
 */
record JawRoot(
    Hold hold,
    double jointCoefficient,
    ToDoubleFunction<Band> packingEnd,
    double fixedJawNPerM,
    double movableJawNPerM,
    double lengthM,
    double gripM,
    double clampingForceN) {

  /** This root under another clamping force in N. */
  JawRoot clampedWith(double forceN) {
    return new JawRoot(
        hold, jointCoefficient, packingEnd, fixedJawNPerM, movableJawNPerM, lengthM, gripM, forceN);
  }

  /**
   * The root for turning.
   *
   * @param movableLineM depth of the line the movable jaw bears on; null for its whole face
   * @param leanRad lean of the movable jaw face
   */
  ElasticRoot turning(@Nullable Double movableLineM, double leanRad) {
    return new ElasticRoot(
        tilting(JawSide.FIXED, fixedJawNPerM),
        movableLineM == null ? Double.valueOf(tilting(JawSide.MOVABLE, movableJawNPerM)) : null,
        movableLineM == null ? 0 : movableLineM,
        lengthM,
        gripM,
        clampingForceN,
        leanRad);
  }

  /** Turning stiffness in N m/rad of the movable face alone about its middle. */
  double movableFaceNmPerRad() {
    return tilting(JawSide.MOVABLE, movableJawNPerM) * lengthM * Math.pow(gripM, 3) / 12;
  }

  /** Stiffness of the fixed side against a force across the jaws in N/m. */
  double fixedSideNPerM() {
    return series(layer(JawSide.FIXED) * lengthM * gripM, fixedJawNPerM);
  }

  /** Stiffness of the movable side against a force across the jaws in N/m. */
  double movableSideNPerM() {
    return series(layer(JawSide.MOVABLE) * lengthM * gripM, movableJawNPerM);
  }

  /** Layer of one face with the tilt of its jaw in series, in Pa/m. */
  double tilting(JawSide side, double jawNPerM) {
    double height = hold.vise().jawHeightM();
    double jawAsLayer = 12 * jawNPerM * height * height / (lengthM * Math.pow(gripM, 3));
    return series(layer(side), jawAsLayer);
  }

  /** Layer of one face and its packing in Pa/m. */
  double layer(JawSide side) {
    double pressure = clampingForceN / (lengthM * gripM);
    double joint = JointStiffness.stiffnessPaPerM(jointCoefficient, pressure);
    Packing packing = JawBearings.packing(hold, side);
    if (packing == null
        || packing.kind() == PackingKind.WIRE
        || packing.kind() == PackingKind.STRIP) {
      return joint;
    }
    double youngsPa = packingEnd.applyAsDouble(PackingBody.of(packing.material()).youngsPa());
    return series(joint / 2, youngsPa / packing.sizeM());
  }

  private static double series(double first, double second) {
    return first * second / (first + second);
  }
}
