package org.standproud.mechanics.holding.slip;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * The force of the cut on the work in the vise frame, as its least and greatest values over the
 * pass.
 *
 * @param leastXN least force along the jaws in N; negative where the cut also pushes toward -X
 * @param greatestXN greatest force along the jaws in N
 * @param leastYN least force across the jaws in N, negative away from the fixed jaw
 * @param greatestYN greatest force across the jaws in N, positive toward the fixed jaw
 * @param leastZN least upright force in N, negative downward
 * @param greatestZN greatest upright force in N, positive out of the jaws
 * @param heightAboveJawM height of the point of cut above the jaw top in m
 * @param xPositionM place of the point of cut along X from the middle of the stock in m
 * @param offCentreYM greatest distance of the point of cut from the middle of the thickness in m;
 *     half the thickness where it is not known
 */
public record HoldingLoad(
    Band leastXN,
    Band greatestXN,
    Band leastYN,
    Band greatestYN,
    Band leastZN,
    Band greatestZN,
    double heightAboveJawM,
    double xPositionM,
    double offCentreYM) {

  /**
   * Refuses a load out of range.
   *
   * @throws OutsideValidity if a force exceeds 1 MN, a likely least force its greatest, or a place
   *     its range
   */
  public HoldingLoad {
    for (Band band : new Band[] {leastXN, greatestXN, leastYN, greatestYN, leastZN, greatestZN}) {
      within("force of the cut", band.low(), -1e6, 1e6, "N");
      within("force of the cut", band.high(), -1e6, 1e6, "N");
    }
    within("least force along the jaws", leastXN.likely(), -1e6, greatestXN.likely(), "N");
    within("least force across the jaws", leastYN.likely(), -1e6, greatestYN.likely(), "N");
    within("least upright force", leastZN.likely(), -1e6, greatestZN.likely(), "N");
    within("height of the cut above the jaw top", heightAboveJawM, 1e-4, 2, "m");
    within("place of the cut along the jaws", xPositionM, -5, 5, "m");
    within("place of the cut from mid thickness", offCentreYM, 0, 1, "m");
  }

  /** The greatest force each way that the bands allow. */
  public Peaks adverse() {
    return Peaks.of(
        leastXN.low(),
        greatestXN.high(),
        leastYN.low(),
        greatestYN.high(),
        leastZN.low(),
        greatestZN.high());
  }

  /** The likely greatest force each way. */
  public Peaks likely() {
    return Peaks.of(
        leastXN.likely(),
        greatestXN.likely(),
        leastYN.likely(),
        greatestYN.likely(),
        leastZN.likely(),
        greatestZN.likely());
  }

  /** The smallest greatest force each way that the bands allow. */
  public Peaks favourable() {
    return Peaks.of(
        leastXN.high(),
        greatestXN.low(),
        leastYN.high(),
        greatestYN.low(),
        leastZN.high(),
        greatestZN.low());
  }

  /**
   * The greatest force each way, none negative.
   *
   * @param plusXN toward +X in N
   * @param minusXN toward -X in N
   * @param towardFixedN toward the fixed jaw in N
   * @param awayN away from the fixed jaw in N
   * @param upN out of the jaws in N
   * @param downN into the jaws in N
   */
  public record Peaks(
      double plusXN, double minusXN, double towardFixedN, double awayN, double upN, double downN) {

    /**
     * From least and greatest forces along the axes in N: a push that never happens is nothing.
     *
     * @param leastX least along X
     * @param greatestX greatest along X
     * @param leastY least along Y
     * @param greatestY greatest along Y
     * @param leastZ least along Z
     * @param greatestZ greatest along Z
     */
    public static Peaks of(
        double leastX,
        double greatestX,
        double leastY,
        double greatestY,
        double leastZ,
        double greatestZ) {
      return new Peaks(
          Math.max(greatestX, 0),
          Math.max(-leastX, 0),
          Math.max(greatestY, 0),
          Math.max(-leastY, 0),
          Math.max(greatestZ, 0),
          Math.max(-leastZ, 0));
    }
  }
}
