package org.standproud.advice.workholding;

import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.mechanics.holding.jaw.JawFriction;
import org.standproud.mechanics.holding.other.StrapClamp;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Setup;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;

/**
 * The strap clamps of a job: M12 bolts tightened to 40 N.m within a tenth, the bolt half-way
 * between heel and work, one for every 100 mm, two at least: common practice, no source.
 *
 * @param count number of straps
 * @param forceEachN force of each on the work in N
 * @param friction friction of one face of the stock against its support
 */
record Straps(int count, Band forceEachN, Band friction) {

  private static final double BOLT_M = 0.012;
  private static final double HEEL_TO_BOLT_M = 0.04;
  private static final Band NUT_TORQUE_NM = new Band(36, 40, 44);
  private static final double EVERY_M = 0.1;

  static Straps of(Setup setup) {
    return new Straps(
        Math.max(2, (int) Math.ceil(setup.stock().lengthM() / EVERY_M)),
        StrapClamp.tightened(NUT_TORQUE_NM, BOLT_M, HEEL_TO_BOLT_M, HEEL_TO_BOLT_M).forceN(),
        friction(setup));
  }

  /** Total force in N. */
  Band forceN() {
    return forceEachN.times(count);
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
