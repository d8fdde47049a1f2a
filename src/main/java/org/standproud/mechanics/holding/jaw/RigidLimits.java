package org.standproud.mechanics.holding.jaw;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;

/**
 * The greatest force across the jaws that rigid stock between two rigid jaws can take before it
 * tips; own model, from statics.
 *
 * <p>Y points toward the fixed jaw and Z up from the jaw top. The movable jaw pushes with {@code
 * Nm} toward +Y at depth {@code w}, the fixed jaw with {@code R} toward -Y at depth {@code r}, the
 * cut with {@code Fy} at height {@code H}:
 *
 * <pre>
 * along Y:              Nm + Fy - R = 0
 * moment about X at 0:  w Nm - H Fy - r R = 0     (a force Y at height z turns by -z Y)
 * </pre>
 *
 * <p>A stiff movable side gives up a share {@code s} of the load from its clamping force N, {@code
 * Nm = N - s Fy}; {@code s = 0} is a screw that keeps its force. With {@code w} and {@code r} free
 * within their bearings {@code w1..w2} and {@code r1..r2}, the stock is in equilibrium while {@code
 * r} can be kept inside, so
 *
 * <pre>
 * toward the fixed jaw:  Fy  &lt;= N (w2 - r1) / (H + r1 + s (w2 - r1))
 * away from it:         -Fy  &lt;= N (r2 - w1) / (H + r2 - s (r2 - w1))
 * </pre>
 *
 * <p>With {@code s = 0}, a whole fixed face and a wire at w these are {@code N w/H} and {@code N
 * (g-w)/(H+g)}; with a whole movable face {@code N g/H} and {@code N g/(H+g)}. With middle-third
 * bearings they are the loads at which a gap begins. Friction couples are not counted; see {@link
 * #frictionCoupleNm}.
 *
 * @param movable where the movable jaw may bear
 * @param fixed where the fixed jaw may bear
 * @param heightM H, height of the force above the jaw top, in m, 0 to 2
 * @param clampLossShare s, 0 to 1
 */
public record RigidLimits(Bearing movable, Bearing fixed, double heightM, double clampLossShare) {

  /** Least height of the force in m: at the jaw top itself the limit has no bound. */
  private static final double LEAST_HEIGHT_M = 1e-4;

  /**
   * Refuses a height or a share out of range.
   *
   * @throws OutsideValidity if the height is not within 0.1 mm to 2 m, or the share not 0 to 1
   */
  public RigidLimits {
    within("height of the cut above the jaw top", heightM, LEAST_HEIGHT_M, 2, "m");
    within("share of the load taken from the clamping force", clampLossShare, 0, 1, "");
  }

  /**
   * Greatest force toward the fixed jaw in N; zero if the bearings cannot hold it.
   *
   * @param clampingForceN N, in N
   */
  public double towardFixedN(double clampingForceN) {
    double lever = movable.deepestM() - fixed.shallowestM();
    return lever <= 0
        ? 0
        : clampingForceN * lever / (heightM + fixed.shallowestM() + clampLossShare * lever);
  }

  /**
   * Greatest force away from the fixed jaw in N, as a positive number; zero if the bearings cannot
   * hold it.
   *
   * @param clampingForceN N, in N
   */
  public double awayN(double clampingForceN) {
    double lever = fixed.deepestM() - movable.shallowestM();
    return lever <= 0
        ? 0
        : clampingForceN * lever / (heightM + fixed.deepestM() - clampLossShare * lever);
  }

  /**
   * Depth of the fixed jaw's resultant below the jaw top in m, {@code (w N - H Fy)/(N + Fy)}; the
   * stock tips when it leaves the gripped height.
   *
   * @param clampingForceN N, in N
   * @param movableDepthM w, in m
   * @param heightM H, in m
   * @param forceTowardFixedN Fy, in N, greater than {@code -N}
   * @throws OutsideValidity if Fy overcomes the clamping force
   */
  public static double resultantDepthM(
      double clampingForceN, double movableDepthM, double heightM, double forceTowardFixedN) {
    within("force toward the fixed jaw", forceTowardFixedN, -0.999 * clampingForceN, 1e9, "N");
    return (movableDepthM * clampingForceN - heightM * forceTowardFixedN)
        / (clampingForceN + forceTowardFixedN);
  }

  /**
   * The couple in N m that vertical friction on the two faces could add against tipping, {@code mu
   * N t}; never counted in the limits, since the same friction is needed against slip.
   *
   * @param friction mu
   * @param clampingForceN N, in N
   * @param thicknessM t, in m
   */
  public static double frictionCoupleNm(double friction, double clampingForceN, double thicknessM) {
    return friction * clampingForceN * thicknessM;
  }
}
