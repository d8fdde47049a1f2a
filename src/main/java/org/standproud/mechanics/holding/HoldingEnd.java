package org.standproud.mechanics.holding;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.holding.contact.ElasticRoot.Stance;
import org.standproud.mechanics.holding.jaw.JawBearings;
import org.standproud.mechanics.holding.jaw.JawBearings.Pair;
import org.standproud.mechanics.holding.jaw.RigidLimits;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.mechanics.holding.slip.JawGrip;
import org.standproud.setup.JawSide;
import org.standproud.setup.Seat;
import org.standproud.setup.Stop;

/**
 * The hold at one end of its bands: adverse, likely or favourable.
 *
 * @param input what is held
 * @param gripM gripped height in m
 * @param lengthM jaw contact length in m
 * @param clampingForceN clamping force in N
 * @param friction friction of the weaker face
 * @param peaks greatest forces each way
 * @param toward bearings for a push toward the fixed jaw
 * @param away bearings for a push away from it
 * @param shareToward share of a push toward the fixed jaw that is lost from the clamping force
 * @param shareAway share of a push away from it that is added to the clamping force
 * @param root joint and jaw stiffness at this end
 * @param movableLineM depth of the line the movable jaw bears on; null for its whole face
 * @param leanRad lean of the movable jaw face in rad
 */
record HoldingEnd(
    HoldingInput input,
    double gripM,
    double lengthM,
    double clampingForceN,
    double friction,
    Peaks peaks,
    Pair toward,
    Pair away,
    double shareToward,
    double shareAway,
    JawRoot root,
    @Nullable Double movableLineM,
    double leanRad) {

  /** The least part of the rigid limit under which stiffness is asked for. */
  private static final double PROBE = 1e-3;

  private static final double LEAST_CLAMP_N = 1;

  double limitTowardN() {
    return limits(toward, shareToward).towardFixedN(clampingForceN);
  }

  double limitAwayN() {
    return limits(away, shareAway).awayN(clampingForceN);
  }

  double noGapTowardN() {
    return limits(toward.withoutGap(gripM), shareToward).towardFixedN(clampingForceN);
  }

  double noGapAwayN() {
    return limits(away.withoutGap(gripM), shareAway).awayN(clampingForceN);
  }

  JawGrip grip() {
    Seat seat = input.hold().seat();
    Stop stop = input.hold().stop();
    return new JawGrip(
        clampingForceN,
        friction,
        limitTowardN(),
        limitAwayN(),
        lengthM,
        input.stock().thicknessM(),
        gripM,
        seat != null && seat.carries(),
        stop != null && stop.takesPlusX(),
        stop != null && stop.takesMinusX());
  }

  double combinedMargin() {
    HoldingLoad load = input.load();
    return grip().combinedMargin(load, peaks);
  }

  double turningTowardNmPerRad() {
    return turning(Math.max(peaks.towardFixedN(), PROBE * limitTowardN()));
  }

  double turningAwayNmPerRad() {
    return turning(-Math.max(peaks.awayN(), PROBE * limitAwayN()));
  }

  /** The least gripped height that stays on the fixed jaw in m; zero if the stock tips. */
  double contactHeightM() {
    return Math.min(stanceContactM(peaks.towardFixedN()), stanceContactM(-peaks.awayN()));
  }

  /** Greatest pressure on a flat face in Pa; infinite if the stock tips. */
  double facePressurePa() {
    return Math.max(stancePressurePa(peaks.towardFixedN()), stancePressurePa(-peaks.awayN()));
  }

  private double turning(double forceN) {
    if (fixedLineM() != null) {
      return movableLineM == null ? root.movableFaceNmPerRad() : 0;
    }
    double left = clampLeftN(forceN);
    return forceN == 0 || left <= LEAST_CLAMP_N
        ? 0
        : root.clampedWith(left)
            .turning(movableLineM, leanRad)
            .turningStiffnessNmPerRad(forceN, input.load().heightAboveJawM());
  }

  private @Nullable Double fixedLineM() {
    return JawBearings.lineDepthM(input.hold(), JawSide.FIXED, gripM);
  }

  /** The movable jaw's force under a push toward the fixed jaw, which takes some of it away. */
  private double clampLeftN(double forceN) {
    return clampingForceN - shareToward * Math.max(forceN, 0);
  }

  private double stanceContactM(double forceN) {
    return fixedLineM() != null ? 0 : stance(forceN).map(Stance::fixedContactM).orElse(0.0);
  }

  private double stancePressurePa(double forceN) {
    Double fixedLine = fixedLineM();
    return fixedLine != null
        ? againstFixedLinePa(fixedLine, forceN)
        : stance(forceN).map(Stance::peakPressurePa).orElse(Double.POSITIVE_INFINITY);
  }

  private Optional<Stance> stance(double forceN) {
    double left = clampLeftN(forceN);
    return left <= LEAST_CLAMP_N
        ? Optional.empty()
        : root.clampedWith(left)
            .turning(movableLineM, leanRad)
            .under(forceN, input.load().heightAboveJawM());
  }

  /** Pressure on the movable face, which alone takes the moment: triangular over what bears. */
  private double againstFixedLinePa(double depthM, double forceN) {
    double moment = (clampingForceN + forceN) * depthM + input.load().heightAboveJawM() * forceN;
    double fromEdge = Math.min(moment / clampingForceN, gripM - moment / clampingForceN);
    return fromEdge <= 0
        ? Double.POSITIVE_INFINITY
        : 2 * clampingForceN / (Math.min(gripM, 3 * fromEdge) * lengthM);
  }

  private RigidLimits limits(Pair pair, double share) {
    return new RigidLimits(pair.movable(), pair.fixed(), input.load().heightAboveJawM(), share);
  }
}
