package org.standproud.advice.everyday;

import java.util.Set;
import org.standproud.advice.Verdict;
import org.standproud.advice.whatif.Judged;

/**
 * An everyday set-up with the answer of the service.
 *
 * @param row the set-up
 * @param verdict the verdict of the service
 * @param stops ids of the stops that fail or are open
 * @param cautions ids of the cautions that fail or are open
 */
record CheckedSetup(EverydaySetup row, Verdict verdict, Set<String> stops, Set<String> cautions) {

  /** Most cautions that a sound set-up should be answered with. */
  static final int MOST_CAUTIONS = 2;

  static CheckedSetup of(EverydaySetup row, Judged judged) {
    return new CheckedSetup(row, judged.verdict(), judged.stops(), judged.cautions());
  }

  boolean missed() {
    return row.machinist().missedBy(verdict);
  }

  boolean falseAlarm() {
    return row.machinist().refusedBy(verdict);
  }

  boolean bad() {
    return row.machinist() == MachinistVerdict.DO_NOT_RUN;
  }

  /** Whether it is sound and may run, but is answered with more cautions than anybody reads. */
  boolean crowded() {
    return !bad() && !falseAlarm() && cautions.size() > MOST_CAUTIONS;
  }
}
