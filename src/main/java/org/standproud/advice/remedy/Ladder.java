package org.standproud.advice.remedy;

import java.util.List;
import java.util.function.UnaryOperator;
import org.standproud.setup.Setup;

/**
 * Changes of one kind in one direction, the smallest first, in steps that a shop can set.
 *
 * @param kind what is changed
 * @param rungs each change made to a set-up
 */
record Ladder(ChangeKind kind, List<UnaryOperator<Setup>> rungs) {

  Ladder {
    rungs = List.copyOf(rungs);
  }

  @SafeVarargs
  static Ladder of(ChangeKind kind, UnaryOperator<Setup>... rungs) {
    return new Ladder(kind, List.of(rungs));
  }

  /** The change of one rung. */
  Step at(int rung) {
    return new Step(this, rung);
  }

  int size() {
    return rungs.size();
  }
}
