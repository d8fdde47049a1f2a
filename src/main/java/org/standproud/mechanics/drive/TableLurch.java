package org.standproud.mechanics.drive;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.Machine;

/**
 * Whether the cut pulls the table through the lost motion of its screw, and the bite that follows.
 *
 * <p>The table jumps ahead when the greatest pull with its motion exceeds what the slide holds; it
 * jumps by up to the backlash, and the next tooth bites up to f_z + backlash. A preloaded screw, or
 * one without lost motion, cannot let it. Own model; no measured lurch was found. Published
 * statements only say that climb cuts want a screw free of backlash.
 *
 * @param pull the force of the cut along the table's motion
 * @param holdN what the slide holds in N
 * @param holdOverPull hold over greatest pull; above 1 the table stays on its screw; not above
 *     {@value #NO_PULL}
 * @param lurchM how far the table may jump in m, from none to the backlash
 * @param feedPerToothM feed per tooth before any lurch in m, hand or power
 * @param biteM feed per tooth of a tooth after a lurch in m
 * @param assumptions what was assumed
 */
public record TableLurch(
    TablePull pull,
    Band holdN,
    Band holdOverPull,
    Band lurchM,
    Band feedPerToothM,
    Band biteM,
    List<Assumption> assumptions) {

  /** The ratio written when there is next to no pull; greater values are written so. */
  public static final double NO_PULL = 1000;

  private static final double LEAST_PULL_N = 1e-3;

  /** Copies the list. */
  public TableLurch {
    assumptions = List.copyOf(assumptions);
  }

  /**
   * Sets the pull of a pass against the slide and the screw.
   *
   * @param machine the machine
   * @param cut the pass
   * @param leastXN least (most negative) force on the work along X over a turn in N
   * @param meanXN mean force on the work along X in N
   * @param greatestXN greatest force on the work along X over a turn in N
   * @param downForceN force of the cut on the work toward the table in N, negative if it lifts; its
   *     low end is the one that decides
   * @throws OutsideValidity if backlash (0 to 20 mm) or an input of the friction or of the feed is
   *     out of its range
   */
  public static TableLurch of(
      Machine machine, Cut cut, Band leastXN, Band meanXN, Band greatestXN, Band downForceN) {
    OutsideValidity.within("backlash", machine.backlashM(), 0, 0.02, "m");
    TablePull pull = TablePull.of(cut.feed(), leastXN, meanXN, greatestXN);
    TableFriction friction = TableFriction.of(machine, cut, downForceN);
    Band ratio = holdOverPull(friction.holdN(), pull.greatestWithN());
    Band lurchM = lurchM(machine, ratio);
    Band feedM = HandFeed.feedPerToothM(cut);
    List<Assumption> assumptions = new ArrayList<>(friction.assumptions());
    if (HandFeed.assumed(cut)) {
      assumptions.add(HandFeed.ASSUMPTION);
    }
    return new TableLurch(
        pull, friction.holdN(), ratio, lurchM, feedM, feedM.plus(lurchM), assumptions);
  }

  private static Band holdOverPull(Band holdN, Band pullN) {
    return holdN
        .over(pullN.map(p -> FastMath.max(p, LEAST_PULL_N)))
        .map(ratio -> FastMath.min(ratio, NO_PULL));
  }

  private static Band lurchM(Machine machine, Band holdOverPull) {
    if (machine.preloadedScrew() || holdOverPull.low() >= 1) {
      return Band.exactly(0);
    }
    double likely = holdOverPull.likely() < 1 ? machine.backlashM() : 0;
    return new Band(0, likely, machine.backlashM());
  }
}
