package org.standproud.mechanics.holding.slip;

import static org.standproud.mechanics.OutsideValidity.within;

import org.hipparchus.analysis.solvers.BrentSolver;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;

/**
 * What two jaws can take when slip, lift, pitch, yaw and tip come together: a lower bound from
 * static admissibility; own model.
 *
 * <p>The whole load is multiplied by {@code m}; the combined margin is the greatest {@code m} for
 * which this distribution of pressure and friction is admissible:
 *
 * <ul>
 *   <li>Tip about X: {@code m |Fy|} stays below the rigid limit of its direction; {@code u} is its
 *       part of that limit.
 *   <li>Pressure: each face counts with {@code (N - m|Fy|) k}. {@code k = min(1, 1.5 (1-u))} is the
 *       part of the gripped height still in contact under a linear pressure whose resultant moves
 *       toward an edge: a face that rocks on its edge is not counted on for friction.
 *   <li>Yaw about Z: {@code Fy} at {@code x} moves the fixed jaw's resultant along X by {@code e =
 *       m|x Fy|/(N - m|Fy|)}; pressure is taken as even over the length {@code L' = L - 2e} that is
 *       centred on it. The movable jaw carries no yaw moment.
 *   <li>Friction on a line of length L' with even pressure: lengthwise part {@code a}, even upright
 *       part {@code b} and upright part {@code c} of opposite sign on the two halves, admissible if
 *       {@code a^2 + (|b|+|c|)^2 <= 1} everywhere; the couple of c is a quarter of {@code L'}. So
 *       {@code sqrt(Fx^2 + (|Fz| + 4M/L')^2)} must stay below {@code 2 mu (N - m|Fy|) k}.
 *   <li>Pitch about Y: {@code M = (H + g)|Fx| + (|x| + e)|Fz|}, signs never relieving each other,
 *       friction taken at the bottom of the grip.
 *   <li>A cut off the middle of the thickness by y loads one face with {@code 1/2 + y/t}: the
 *       demand is multiplied by {@code 1 + 2y/t}.
 *   <li>A seat takes a downward force and never an upward one. Against pitch it pushes up at the
 *       end of the contact and the friction is even over the length: {@code 2M/L'} in place of
 *       {@code 4M/L'}.
 *   <li>A stop takes the push toward its own side, at the bottom of the grip; the pitch moment
 *       remains.
 * </ul>
 *
 * <p>Loads are taken at all eight corners of the peaks. Friction torsion of the gripped height, the
 * rise of pressure under a push toward the fixed jaw and friction couples against tipping are not
 * counted. At a fixed height of cut the pitch lever grows with grip depth; with the same stock set
 * deeper, {@code H + g} stays and the margin rises.
 *
 * @param clampingForceN N in N
 * @param friction mu, 0.01 to 1
 * @param tipTowardFixedN rigid limit toward the fixed jaw in N
 * @param tipAwayN rigid limit away from it in N
 * @param contactLengthM L, the lesser of stock length and jaw width, in m
 * @param thicknessM t in m
 * @param gripM g in m
 * @param seated whether the underside sits on something
 * @param stopPlusX whether a stop takes a push toward +X
 * @param stopMinusX whether a stop takes a push toward -X
 */
public record JawGrip(
    double clampingForceN,
    double friction,
    double tipTowardFixedN,
    double tipAwayN,
    double contactLengthM,
    double thicknessM,
    double gripM,
    boolean seated,
    boolean stopPlusX,
    boolean stopMinusX) {

  /**
   * Refuses a grip out of range.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public JawGrip {
    within("clamping force", clampingForceN, 1, 1e6, "N");
    within("jaw friction", friction, 0.01, 1, "");
    within("tip limit toward the fixed jaw", tipTowardFixedN, 0, 1e12, "N");
    within("tip limit away from the fixed jaw", tipAwayN, 0, 1e12, "N");
    within("jaw contact length", contactLengthM, 1e-3, 2, "m");
    within("stock thickness", thicknessM, 1e-4, 1, "m");
    within("grip depth", gripM, 1e-3, 0.5, "m");
  }

  /**
   * Slip alone: {@code 2 mu N} over the greatest force in the plane of the jaws that neither stop
   * nor seat takes.
   *
   * @param peaks greatest forces each way
   */
  public double slipMargin(Peaks peaks) {
    double along = Math.max(unstopped(peaks.plusXN()), unstopped(-peaks.minusXN()));
    double upright = Math.max(peaks.upN(), seated ? 0 : peaks.downN());
    return Margin.of(frictionN(), Math.hypot(along, upright));
  }

  /**
   * Lift alone: {@code 2 mu N} over the greatest upward force.
   *
   * @param peaks greatest forces each way
   */
  public double liftMargin(Peaks peaks) {
    return Margin.of(frictionN(), peaks.upN());
  }

  /**
   * All together: the greatest factor on the whole load that this hold takes, at most {@link
   * Margin#GREATEST}.
   *
   * @param load where the load acts
   * @param peaks greatest forces each way
   */
  public double combinedMargin(HoldingLoad load, Peaks peaks) {
    double least = Margin.GREATEST;
    for (double fx : new double[] {peaks.plusXN(), -peaks.minusXN()}) {
      for (double fy : new double[] {peaks.towardFixedN(), -peaks.awayN()}) {
        for (double fz : new double[] {peaks.upN(), -peaks.downN()}) {
          least = Math.min(least, new Corner(load, fx, fy, fz).margin());
        }
      }
    }
    return least;
  }

  private double frictionN() {
    return 2 * friction * clampingForceN;
  }

  private double unstopped(double fx) {
    return (fx > 0 ? stopPlusX : stopMinusX) ? 0 : Math.abs(fx);
  }

  /** One corner of the box of peaks. */
  private final class Corner {
    private final double along;
    private final double across;
    private final double tipLimit;
    private final double upright;
    private final double pitchNm;
    private final double placeM;
    private final double sharing;

    Corner(HoldingLoad load, double fx, double fy, double fz) {
      placeM = Math.abs(load.xPositionM());
      along = unstopped(fx);
      across = Math.abs(fy);
      tipLimit = fy > 0 ? tipTowardFixedN : tipAwayN;
      upright = seated && fz < 0 ? 0 : Math.abs(fz);
      double overhang = seated && fz < 0 ? Math.max(0, placeM - contactLengthM / 2) : 0;
      pitchNm = (load.heightAboveJawM() + gripM) * Math.abs(fx) + overhang * Math.abs(fz);
      sharing = 1 + Math.min(1, 2 * load.offCentreYM() / thicknessM);
    }

    double margin() {
      double yawLimit = clampingForceN * contactLengthM / 2 / (placeM + contactLengthM / 2);
      double bound = Math.min(Margin.of(tipLimit, across), Margin.of(yawLimit, across));
      if (bound <= 0 || spare(bound) >= 0) {
        return bound;
      }
      return new BrentSolver(1e-10, 1e-12).solve(200, this::spare, 0, bound);
    }

    /** Friction left over at a factor on the load, times contact length, in N m. */
    private double spare(double factor) {
      double pressing = clampingForceN - factor * across;
      double used = tipLimit > 0 ? factor * across / tipLimit : 0;
      double bearing = Math.max(0, Math.min(1, 1.5 * (1 - used)));
      double shift = pressing > 0 ? factor * placeM * across / pressing : contactLengthM / 2;
      double length = Math.max(0, contactLengthM - 2 * shift);
      double couple = pitchNm + upright * (placeM + shift);
      double demand =
          Math.hypot(along * length, upright * length + (seated ? 2 : 4) * couple) * sharing;
      return 2 * friction * pressing * bearing * length - factor * demand;
    }
  }
}
