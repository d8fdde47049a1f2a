package org.standproud.advice.job;

import org.standproud.advice.Verdict;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/**
 * A pass that was judged while searching.
 *
 * @param setup the set-up
 * @param verdict its verdict
 * @param chance share of the draws that hold, 0 to 1; 0 if it could not be computed
 * @param left its score before rounding, 0 to 1
 * @param evidence its facts
 */
record JudgedPass(Setup setup, Verdict verdict, double chance, double left, Evidence evidence) {

  boolean holds() {
    return verdict == Verdict.RUN || verdict == Verdict.RUN_WITH_CARE;
  }

  /** The likely value of a fact in SI; the one given if it is not known. */
  double likely(Fact fact, double ifMissing) {
    return evidence.get(fact) instanceof Value.Quantity q ? q.band().likely() : ifMissing;
  }

  /** The band of a fact in SI; the one given if it is not known. */
  Band band(Fact fact, Band ifMissing) {
    return evidence.get(fact) instanceof Value.Quantity q ? q.band() : ifMissing;
  }
}
