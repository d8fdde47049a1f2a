package org.standproud.advice.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Quantity;
import org.standproud.advice.Verdict;

/**
 * One pass of a plan, in the caller's units.
 *
 * @param number from 1
 * @param stage rough or finish
 * @param takes the amount removed
 * @param axialDepth a_p
 * @param offset cutter axis from the middle of the thickness, positive toward the fixed jaw
 * @param feed which way the cutter moves along the jaws
 * @param mode climb, conventional or both; null if not known
 * @param feedPerTooth f_z
 * @param spindleSpeed n
 * @param edges the required state of the edges
 * @param verdict its verdict
 * @param score its score
 * @param findings ids of its stops and cautions
 * @param firstContact what the first touch does and how to begin
 * @param minutes likely time of the pass
 * @param then what to do after it, in order
 */
public record PlannedPass(
    int number,
    String stage,
    Quantity takes,
    Quantity axialDepth,
    Quantity offset,
    String feed,
    @Nullable String mode,
    Quantity feedPerTooth,
    Quantity spindleSpeed,
    String edges,
    Verdict verdict,
    int score,
    List<String> findings,
    String firstContact,
    double minutes,
    List<String> then) {

  /** Copies the lists. */
  public PlannedPass {
    findings = List.copyOf(findings);
    then = List.copyOf(then);
  }
}
