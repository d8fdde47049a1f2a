package org.standproud.advice.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Quantity;
import org.standproud.advice.Verdict;

/**
 * One clamping of a route with its passes, in the caller's units.
 *
 * @param number its number, from 1
 * @param face the face that is milled
 * @param holding how the plate lies or stands
 * @param vise the vise
 * @param gripDepth height of stock inside the jaws
 * @param stickOut height of stock above the jaws
 * @param parallels height of the parallels; absent if it sits on the bed of the vise
 * @param packing packing on the movable jaw; absent if there is none
 * @param clamping how hard to pull the handle
 * @param cutter the cutter
 * @param before what to do before the first pass, in order
 * @param passes the passes in order
 * @param after what to do after the last pass, in order
 * @param verdict the worst verdict of its passes
 * @param minutes likely time, bench work included
 * @param tried other ways to hold it that were tried for this face
 */
public record RouteSetUp(
    int number,
    String face,
    String holding,
    String vise,
    Quantity gripDepth,
    Quantity stickOut,
    @Nullable Quantity parallels,
    @Nullable String packing,
    String clamping,
    String cutter,
    List<RouteStep> before,
    List<RoutePass> passes,
    List<RouteStep> after,
    Verdict verdict,
    double minutes,
    List<TriedHold> tried) {

  /** Copies the lists. */
  public RouteSetUp {
    before = List.copyOf(before);
    passes = List.copyOf(passes);
    after = List.copyOf(after);
    tried = List.copyOf(tried);
  }
}
