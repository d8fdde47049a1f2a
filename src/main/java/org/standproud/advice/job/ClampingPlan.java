package org.standproud.advice.job;

import java.util.Comparator;
import java.util.List;
import org.standproud.advice.Verdict;

/**
 * A face milled with one choice of hold and cutter: by verdict, then chance, then minutes, it is
 * better or worse than another.
 *
 * @param cut what comes off
 * @param clamping the choice
 * @param passes the passes of one clamping in order
 * @param verdict the worst of its passes
 * @param chance the least of its passes, to two figures, so that a draw or two decide nothing
 * @param minutes likely time of all clampings: clamping, cutting and the time between passes
 */
record ClampingPlan(
    FaceCut cut,
    Clamping clamping,
    List<PassDraft> passes,
    Verdict verdict,
    double chance,
    double minutes) {

  static final Comparator<ClampingPlan> BEST_FIRST =
      Comparator.comparing(ClampingPlan::verdict)
          .thenComparing(plan -> -plan.chance())
          .thenComparing(ClampingPlan::minutes);

  ClampingPlan {
    passes = List.copyOf(passes);
  }

  boolean holds() {
    return verdict == Verdict.RUN || verdict == Verdict.RUN_WITH_CARE;
  }
}
