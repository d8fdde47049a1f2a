package org.standproud.advice.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Verdict;
import org.standproud.advice.workholding.OtherHold;

/**
 * The best route found for a whole job, in the caller's units. A route that could not be judged in
 * one of its passes is not judged; nothing in it is safe because the rest is.
 *
 * @param verdict the worst verdict of its passes
 * @param summary the verdict of the job in one or two sentences
 * @param riskiest the riskiest pass and what to do about it
 * @param chance the least chance of its passes, 0 to 1; absent if one could not be computed
 * @param sequence the order of the faces
 * @param minutes likely time of the whole route, with the bounds of the bench work
 * @param cutMinutes likely time of it in the cut
 * @param setUps the clampings in order
 * @param tolerances whether the finishing passes leave what is asked for
 * @param otherHolds other ways to hold the riskiest pass, judged by every card that is not about
 *     jaws or packing; empty if the route may run
 * @param search how much was tried
 * @param assumptions what the route prescribes or takes for granted, with sources
 * @param cautions the cautions of every answer; show them
 */
public record JobPlan(
    Verdict verdict,
    String summary,
    RiskiestPass riskiest,
    @Nullable Double chance,
    String sequence,
    Minutes minutes,
    double cutMinutes,
    List<RouteSetUp> setUps,
    List<ToleranceCheck> tolerances,
    List<OtherHold> otherHolds,
    SearchCount search,
    List<String> assumptions,
    List<String> cautions) {

  /** Copies the lists. */
  public JobPlan {
    setUps = List.copyOf(setUps);
    tolerances = List.copyOf(tolerances);
    otherHolds = List.copyOf(otherHolds);
    assumptions = List.copyOf(assumptions);
    cautions = List.copyOf(cautions);
  }

  /**
   * The riskiest pass.
   *
   * @param pass its number
   * @param setUp the number of its set-up
   * @param verdict its verdict
   * @param text what it is and what to do about it
   */
  public record RiskiestPass(int pass, int setUp, Verdict verdict, String text) {}

  /**
   * How much was tried.
   *
   * @param routes routes compared: vises and orders of the faces
   * @param setUps set-ups judged, each with the draws of an assessment
   * @param complete whether the search ended before its budget did
   */
  public record SearchCount(int routes, int setUps, boolean complete) {}

  /** The passes of all set-ups in order. */
  public List<RoutePass> allPasses() {
    return setUps.stream().flatMap(setUp -> setUp.passes().stream()).toList();
  }
}
