package org.standproud.advice.remedy;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.standproud.setup.Setup;

/**
 * Changes of one kind in one direction, the smallest first, in steps that a shop can set.
 *
 * @param kind the kind of change
 * @param rungs each change applied to a set-up
 */
record Ladder(ChangeKind kind, List<UnaryOperator<Setup>> rungs) {

  Ladder {
    rungs = List.copyOf(rungs);
  }

  @SafeVarargs
  @SuppressWarnings("varargs") // the list is a copy
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

  /** The rungs judged first, rising: the last and two between, or all of a short ladder. */
  Set<Integer> probes() {
    int last = size() - 1;
    return last <= 2
        ? new TreeSet<>(List.of(0, (last + 1) / 2, last))
        : new TreeSet<>(List.of(last / 3, 2 * last / 3, last));
  }
}
