package org.standproud.mechanics.drive;

import java.util.List;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.Machine;
import org.standproud.setup.request.CutFields;

/**
 * What holds a table back against a pull: mu (m g + F_down) + mu F_gib + drag of a partly locked
 * slide.
 *
 * <p>Coulomb friction of a flat slide. Cast-iron ways have mu of 0.1 to 0.2, from memory. An upward
 * force on the table takes from its weight, at most all of it.
 *
 * @param holdN what the slide holds in N, never negative
 * @param assumptions what was assumed
 */
public record TableFriction(Band holdN, List<Assumption> assumptions) {

  /** Drag of a slide that is partly locked and can still be fed, in N. */
  public static final Band PARTLY_LOCKED_N = new Band(100, 300, 600);

  private static final double STANDARD_GRAVITY_M_PER_S2 = 9.80665;

  /** Copies the list. */
  public TableFriction {
    assumptions = List.copyOf(assumptions);
  }

  /**
   * Friction of the X slide of a machine in one pass.
   *
   * @param machine the machine
   * @param cut the pass; says whether the slide is partly locked
   * @param downForceN force of the cut on the work toward the table in N, negative if it lifts
   * @throws OutsideValidity if mass (0 to 100 t), friction (0 to 1), gib force (0 to 1 MN) or the
   *     force of the cut (1 MN either way) is out of its range
   */
  public static TableFriction of(Machine machine, Cut cut, Band downForceN) {
    OutsideValidity.within("moving mass", machine.movingMassKg(), 0, 1e5, "kg");
    OutsideValidity.within("slide friction", machine.slideFriction().low(), 0, 1, "");
    OutsideValidity.within("slide friction", machine.slideFriction().high(), 0, 1, "");
    OutsideValidity.within("gib force", machine.gibPreloadN().low(), 0, 1e6, "N");
    OutsideValidity.within("gib force", machine.gibPreloadN().high(), 0, 1e6, "N");
    OutsideValidity.within("force on the table", downForceN.low(), -1e6, 1e6, "N");
    OutsideValidity.within("force on the table", downForceN.high(), -1e6, 1e6, "N");
    double weightN = machine.movingMassKg() * STANDARD_GRAVITY_M_PER_S2;
    Band onSlideN =
        downForceN.map(down -> FastMath.max(0, weightN + down)).plus(machine.gibPreloadN());
    Band holdN = machine.slideFriction().times(onSlideN).plus(lockDragN(cut.slideLocked()));
    return new TableFriction(holdN, lockAssumptions(cut.slideLocked()));
  }

  /**
   * What the slide holds at single values, in N.
   *
   * @param machine the machine
   * @param downForceN force of the cut toward the table in N, negative if it lifts
   * @param friction of the slide
   * @param gibN force of the gib in N
   * @param lockN drag of the lock in N
   */
  public static double holdN(
      Machine machine, double downForceN, double friction, double gibN, double lockN) {
    double weightN = machine.movingMassKg() * STANDARD_GRAVITY_M_PER_S2;
    return friction * (FastMath.max(0, weightN + downForceN) + gibN) + lockN;
  }

  /**
   * Drag of the lock of a slide in N.
   *
   * @param locked whether it is partly locked; null if not known
   */
  public static Band lockDragN(@Nullable Boolean locked) {
    if (locked == null) {
      return new Band(0, 0, PARTLY_LOCKED_N.high());
    }
    return locked ? PARTLY_LOCKED_N : Band.exactly(0);
  }

  /** What is assumed of the lock of a slide. */
  public static List<Assumption> lockAssumptions(@Nullable Boolean locked) {
    if (locked == null) {
      return List.of(
          new Assumption(
              CutFields.SLIDE_LOCKED,
              "the slide may run free: 0 to 600 N of drag from its lock, likely none",
              "common practice, no source",
              "whether the X slide is partly locked for drag"));
    }
    return locked
        ? List.of(
            new Assumption(
                CutFields.SLIDE_LOCKED,
                "a slide that is partly locked and can still be fed drags with 100 to 600 N",
                "common practice, no source"))
        : List.of();
  }
}
