package org.standproud.mechanics.holding.jaw;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.standproud.mechanics.OutsideValidity;

/**
 * Where to lay a wire between the movable jaw and the stock: deeper packing takes more push toward
 * the fixed jaw and less push away from it.
 *
 * <p>The depth is sought within the middle third of the grip, where no gap opens under clamping
 * alone; outside it the stock hangs on an edge of the jaw however well one limit reads.
 *
 * <p>Both limits are those of {@link RigidLimits} with a line at depth w and a whole fixed face.
 * The best depth makes the two margins equal, or lies at the end of the usable range if one is
 * always the smaller.
 *
 * @param depthM the best depth below the jaw top in m
 * @param towardFixedN limit toward the fixed jaw there in N
 * @param awayN limit away from the fixed jaw there in N
 */
public record BestPackingDepth(double depthM, double towardFixedN, double awayN) {

  /**
   * What a push is counted as at least, in N. Two pushes smaller than this are alike, so that the
   * depth for no push at all is the one that is ready for a push from either side.
   */
  private static final double LEAST_PUSH_N = 1e-3;

  /** Depths tried between the shallowest and the deepest. */
  private static final int TRIED = 48;

  /**
   * One draw of what the depth hangs on.
   *
   * @param clampingForceN N in N
   * @param clampLossShare s of {@link RigidLimits}
   * @param peakTowardN greatest push toward the fixed jaw in N, not negative
   * @param peakAwayN greatest push away from it in N, not negative
   */
  public record Case(
      double clampingForceN, double clampLossShare, double peakTowardN, double peakAwayN) {}

  /**
   * The depth at which the push that opens a gap at the fixed jaw is the greatest multiple of the
   * push there is, either way, in the draw that only a twentieth of the draws fall short of. A gap
   * opens before the stock tips, so the margins of tip are the greater; at an end of the middle
   * third a gap would open at once.
   *
   * @param cases the draws
   * @param gripM g in m
   * @param wireSizeM diameter of the wire in m
   * @param heightM H in m
   * @return the middle of the grip if the wire leaves no choice within the middle third
   */
  public static double over(List<Case> cases, double gripM, double wireSizeM, double heightM) {
    double shallow = shallowestM(gripM, wireSizeM);
    double deep = deepestM(gripM, wireSizeM);
    if (deep <= shallow || cases.isEmpty()) {
      return gripM / 2;
    }
    double best = gripM / 2;
    double most = Double.NEGATIVE_INFINITY;
    double[] lowest = new double[cases.size() / 20 + 1];
    for (int k = 0; k <= TRIED; k++) {
      double w = shallow + k * (deep - shallow) / TRIED;
      Arrays.fill(lowest, Double.POSITIVE_INFINITY);
      for (Case c : cases) {
        double lever = w - gripM / 3;
        double toward =
            lever
                / (heightM + gripM / 3 + c.clampLossShare * lever)
                / Math.max(c.peakTowardN, LEAST_PUSH_N);
        double away =
            (2 * gripM / 3 - w) / (heightM + 2 * gripM / 3) / Math.max(c.peakAwayN, LEAST_PUSH_N);
        keep(c.clampingForceN * Math.min(toward, away), lowest);
      }
      double low = lowest[lowest.length - 1];
      if (low > most) {
        most = low;
        best = w;
      }
    }
    return best;
  }

  /** Puts a number among the lowest ones, which stay in order, if it is one of them. */
  private static void keep(double number, double[] lowest) {
    int at = lowest.length - 1;
    if (!(number < lowest[at])) {
      return;
    }
    for (; at > 0 && lowest[at - 1] > number; at--) {
      lowest[at] = lowest[at - 1];
    }
    lowest[at] = number;
  }

  /**
   * The limits with the wire at one depth: a point of the trade-off curve.
   *
   * @param depthM w in m, 0 to the gripped height
   * @param gripM g in m
   * @param heightM H in m
   * @param clampingForceN N in N
   * @param clampLossShare s of {@link RigidLimits}
   * @throws OutsideValidity if the depth does not lie within the gripped height
   */
  public static BestPackingDepth at(
      double depthM, double gripM, double heightM, double clampingForceN, double clampLossShare) {
    within("depth of the packing", depthM, 0, gripM, "m");
    // A loss of clamping force eases the push away; only its harm to the other is counted.
    Bearing line = Bearing.lineAt(depthM);
    Bearing face = Bearing.wholeFace(gripM);
    return new BestPackingDepth(
        depthM,
        new RigidLimits(line, face, heightM, clampLossShare).towardFixedN(clampingForceN),
        new RigidLimits(line, face, heightM, 0).awayN(clampingForceN));
  }

  /**
   * Shallowest depth in m at which a wire lies inside the grip and clamping alone leaves no gap.
   *
   * @param gripM g in m
   * @param wireSizeM diameter of the wire in m
   */
  public static double shallowestM(double gripM, double wireSizeM) {
    return Math.max(wireSizeM / 2, gripM / 3);
  }

  /**
   * Deepest such depth in m; less than the shallowest if the wire leaves no choice.
   *
   * @param gripM g in m
   * @param wireSizeM diameter of the wire in m
   */
  public static double deepestM(double gripM, double wireSizeM) {
    return Math.min(gripM - wireSizeM / 2, 2 * gripM / 3);
  }

  /**
   * The depth that makes the smaller margin greatest; without a push either way, the smaller limit.
   *
   * @param gripM g in m
   * @param wireSizeM diameter of the wire in m: it must lie wholly inside the grip
   * @param heightM H in m
   * @param clampingForceN N in N
   * @param clampLossShare s of {@link RigidLimits}
   * @param peakTowardN greatest push toward the fixed jaw in N, not negative
   * @param peakAwayN greatest push away from it in N, not negative
   * @return the middle of the grip if the wire leaves no choice within the middle third
   * @throws OutsideValidity if the wire is thicker than the grip is deep or a push is negative
   */
  public static BestPackingDepth of(
      double gripM,
      double wireSizeM,
      double heightM,
      double clampingForceN,
      double clampLossShare,
      double peakTowardN,
      double peakAwayN) {
    within("wire size", wireSizeM, 0, gripM, "m");
    within("push toward the fixed jaw", peakTowardN, 0, 1e6, "N");
    within("push away from the fixed jaw", peakAwayN, 0, 1e6, "N");
    double shallow = shallowestM(gripM, wireSizeM);
    double deep = deepestM(gripM, wireSizeM);
    if (deep <= shallow) {
      return at(gripM / 2, gripM, heightM, clampingForceN, clampLossShare);
    }
    double towardN = Math.max(peakTowardN, LEAST_PUSH_N);
    double awayN = Math.max(peakAwayN, LEAST_PUSH_N);
    // Rises with depth; zero where limit over push is the same both ways.
    DoubleUnaryOperator excess =
        w -> {
          BestPackingDepth here = at(w, gripM, heightM, clampingForceN, clampLossShare);
          return here.towardFixedN * awayN - here.awayN * towardN;
        };
    double depth;
    if (excess.applyAsDouble(shallow) >= 0) {
      depth = shallow;
    } else if (excess.applyAsDouble(deep) <= 0) {
      depth = deep;
    } else {
      depth = new BrentSolver(1e-9).solve(100, excess::applyAsDouble, shallow, deep);
    }
    return at(depth, gripM, heightM, clampingForceN, clampLossShare);
  }
}
