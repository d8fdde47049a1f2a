package org.standproud.advice.remedy;

import java.util.Comparator;
import java.util.List;
import org.standproud.setup.Setup;

/**
 * One rung of a ladder.
 *
 * @param ladder the ladder
 * @param rung number of the rung, 0 for the smallest change
 */
record Step(Ladder ladder, int rung) {

  private static final Comparator<Step> IN_ORDER = Comparator.comparing(step -> step.kind());

  ChangeKind kind() {
    return ladder.kind();
  }

  /** A set-up with several changes, applied in the order of their kinds. */
  static Setup all(List<Step> steps, Setup setup) {
    Setup changed = setup;
    for (Step step : steps.stream().sorted(IN_ORDER).toList()) {
      changed = step.ladder.rungs().get(step.rung).apply(changed);
    }
    return changed;
  }
}
