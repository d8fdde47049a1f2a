package org.standproud.mechanics.curves;

import java.util.Optional;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.holding.PackingTrade;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.sampling.JointSample;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/**
 * Why the best depth for a wire at the movable jaw lies where it lies for one set-up: the pushes of
 * this cut both ways, and the margin each way at every depth.
 *
 * @param pushTowardFixedN greatest push toward the fixed jaw that the hold must bear, rebound
 *     included, in N
 * @param pushAwayN greatest push away from it, rebound included, in N
 * @param trade the margins over depth
 */
public record PackingCurve(Band pushTowardFixedN, Band pushAwayN, PackingTrade trade) {

  /**
   * The trade-off for a set-up.
   *
   * @param setup a checked set-up
   * @param points how many depths, 2 to 1000
   * @return empty if the cutter passes beside the stock
   * @throws OutsideValidity if an input is outside the range of the formulas
   */
  public static Optional<PackingCurve> of(Setup setup, int points) {
    return DrawnCut.of(setup, JointSample.of(setup))
        .flatMap(
            drawn -> StandingCut.of(setup).map(cut -> of(cut, drawn.bestPackingDepthM(), points)));
  }

  private static PackingCurve of(StandingCut cut, double bestM, int points) {
    HoldingLoad load = cut.holdingInput().load();
    return new PackingCurve(
        push(load.greatestYN()),
        push(load.leastYN().times(-1)),
        PackingTrade.of(cut.holdingInput(), points).withBest(Band.exactly(bestM)));
  }

  private static Band push(Band forceN) {
    return forceN.map(f -> Math.max(0, f));
  }
}
