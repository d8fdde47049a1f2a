package org.standproud.setup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A pass planned on a set-up, given by its numbers alone: nothing is computed for it.
 *
 * @param stage rough or finish
 * @param axialDepthM a_p in m
 * @param radialDepthM a_e in m, taken off across the jaws; null on a top edge
 * @param feedPerToothM f_z in m; null if not given
 */
public record PlannedCut(
    Stage stage, double axialDepthM, @Nullable Double radialDepthM, @Nullable Band feedPerToothM) {

  /** Most passes of one plan. */
  public static final int MOST = 50;

  /**
   * Two depths or feeds closer than this fraction are the same: no one dials finer, and units are
   * converted.
   */
  private static final double SAME = 1e-4;

  /** What it takes off the face that is milled, in m. */
  public double takesM() {
    return radialDepthM == null ? axialDepthM : radialDepthM;
  }

  /** Whether this is that pass; a feed that is not given fits any. */
  public boolean fits(PlannedCut asked) {
    return stage == asked.stage
        && same(axialDepthM, asked.axialDepthM)
        && (radialDepthM == null
            ? asked.radialDepthM == null
            : asked.radialDepthM != null && same(radialDepthM, asked.radialDepthM))
        && (feedPerToothM == null
            || asked.feedPerToothM == null
            || same(feedPerToothM.likely(), asked.feedPerToothM.likely()));
  }

  private static boolean same(double a, double b) {
    return Math.abs(a - b) <= SAME * Math.max(a, b);
  }

  /**
   * The plan with one of its passes changed: where the changed pass takes less, as many of it as
   * take the same together, as far as a plan may be long.
   *
   * @param plan the passes in order
   * @param before the pass to change; the first that fits it is meant, and the plan stays as it is
   *     if none does
   * @param after what it is changed to
   */
  public static List<PlannedCut> changed(
      List<PlannedCut> plan, PlannedCut before, PlannedCut after) {
    int at = 0;
    while (at < plan.size() && !plan.get(at).fits(before)) {
      at++;
    }
    if (at == plan.size()) {
      return plan;
    }
    boolean feedGiven = plan.get(at).feedPerToothM != null;
    PlannedCut then =
        new PlannedCut(
            after.stage,
            after.axialDepthM,
            after.radialDepthM,
            feedGiven ? after.feedPerToothM : null);
    int room = MOST - plan.size() + 1;
    int count = (int) Math.max(1, Math.min(room, Math.ceil(taken(before) / taken(after) - SAME)));
    List<PlannedCut> changed = new ArrayList<>(plan.subList(0, at));
    changed.addAll(Collections.nCopies(count, then));
    changed.addAll(plan.subList(at + 1, plan.size()));
    return List.copyOf(changed);
  }

  /** Section taken, in m2 or, on a top edge, m: half the step down takes twice the passes too. */
  private static double taken(PlannedCut pass) {
    return pass.axialDepthM * (pass.radialDepthM == null ? 1 : pass.radialDepthM);
  }
}
