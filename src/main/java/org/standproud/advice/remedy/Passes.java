package org.standproud.advice.remedy;

import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.PassHandling;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.time.PassTime;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;

/** Number and time of the passes of a changed cut. */
final class Passes {

  private Passes() {}

  /** Number of passes that replace one pass. */
  static int of(Setup before, Setup after) {
    int levels = PassTime.passes(before.cut().axialDepthM(), after.cut().axialDepthM());
    return before.cut().operation() == Operation.BROAD_SIDE
        ? levels * PassTime.passes(before.sideDepthM(), after.sideDepthM())
        : levels;
  }

  /** Likely time of one pass in s; zero if not known. */
  static double onceS(Judged judged) {
    return judged.evidence().get(Vocabulary.PASS_TIME) instanceof Value.Quantity time
        ? time.band().likely()
        : 0;
  }

  /** Likely time in s of all passes of a changed cut, with the time between them. */
  static double allS(Setup before, ProvenChange after) {
    return PassHandling.likelyS(
        of(before, after.setup()), onceS(after.judged()), after.setup().machine());
  }
}
