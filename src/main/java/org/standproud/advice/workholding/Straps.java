package org.standproud.advice.workholding;

import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.mechanics.holding.jaw.JawFriction;
import org.standproud.mechanics.holding.other.StrapClamp;
import org.standproud.mechanics.holding.other.TableHold;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Setup;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;

/**
 * The strap clamps of a job: M12 bolts tightened to 40 N.m within a tenth, the bolt half-way
 * between heel and work, one for every 100 mm, two at least, or as many as fit, one for every 60
 * mm: common practice, no source.
 *
 * @param count number of straps
 * @param extra how many of them are more than is usual
 * @param forceEachN force of each on the work in N
 * @param friction friction of one face of the stock against its support
 */
record Straps(int count, int extra, Band forceEachN, Band friction) {

  /** An M12 bolt of 100 mm halved by the lever of the strap, and what bends; no source. */
  private static final Band STIFFNESS_EACH_N_PER_M = new Band(15e6, 30e6, 60e6);

  private static final double BOLT_M = 0.012;
  private static final double HEEL_TO_BOLT_M = 0.04;
  private static final Band NUT_TORQUE_NM = new Band(36, 40, 44);
  private static final double EVERY_M = 0.1;
  private static final double CLOSE_M = 0.06;
  private static final int MOST = 8;
  private static final int BAR_BOLTS = 2;

  /** Time to set each strap beyond the usual ones in min; common practice, no source. */
  private static final double MORE_MIN = 3;

  static Straps of(Setup setup) {
    return of(setup, usual(setup));
  }

  /** As many as fit side by side, no fewer than usual. */
  static Straps close(Setup setup) {
    int fitting = (int) Math.floor(setup.stock().lengthM() / CLOSE_M + 1e-9);
    return of(setup, Math.max(usual(setup), Math.min(MOST, fitting)));
  }

  private static int usual(Setup setup) {
    return Math.max(2, (int) Math.ceil(setup.stock().lengthM() / EVERY_M));
  }

  private static Straps of(Setup setup, int count) {
    return new Straps(
        count,
        count - usual(setup),
        StrapClamp.tightened(NUT_TORQUE_NM, BOLT_M, HEEL_TO_BOLT_M, HEEL_TO_BOLT_M).forceN(),
        friction(setup));
  }

  /** Total force in N. */
  Band forceN() {
    return forceEachN.times(count);
  }

  /** Their stiffness against the stock in N/m. */
  Band stiffnessNPerM() {
    return STIFFNESS_EACH_N_PER_M.times(count);
  }

  /** Time to set those beyond the usual ones in min. */
  double moreMinutes() {
    return MORE_MIN * extra;
  }

  /**
   * Push in N that a fence or a stop takes, each with two bolts, which press twice as hard as the
   * straps that they lever down.
   */
  Band barN() {
    return TableHold.bolted(BAR_BOLTS, forceEachN.times(2), friction);
  }

  String words() {
    return count + " strap clamps with M12 bolts tightened to 40 N.m";
  }

  /** Bare ground faces, oily: a shop's straps are no cleaner than its vise. */
  private static Band friction(Setup setup) {
    Vise v = setup.hold().vise();
    Vise ground = ViseBuilder.builder(v).jawSurface(JawSurface.GROUND).build();
    Hold bare = Hold.in(ground, setup.hold().gripDepthM()).held();
    return JawFriction.of(bare, setup.stock().surface(), FaceState.OILY).coefficient();
  }
}
