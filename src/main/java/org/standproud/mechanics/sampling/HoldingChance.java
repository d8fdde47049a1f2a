package org.standproud.mechanics.sampling;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.DrawnHold;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/**
 * How likely a proposed hold is to hold, from the joint sample of everything that is not known; a
 * draw holds if the stock stands and the combined margin and the margins of slip, lift and tip
 * alone all reach the least margin.
 *
 * <p>The standard error is {@code sqrt(p (1 - p)/n)} of the binomial, with p drawn toward one half
 * by one draw each way so that it is not nothing when all or none hold. It is the error of the
 * sampling only; a band that is wrong is not in it.
 *
 * <p>What to measure first: the draws are ranked by their least margin and grouped by each unknown
 * into {@value #GROUPS} equal groups; the variance of the group means over the whole variance (the
 * correlation ratio) is the first-order share of that unknown. {@code GROUPS/n} of it is noise and
 * is taken off. Ranks keep the cap on margins and a few huge ones from ruling. What unknowns do
 * only together is in no share, so the shares may sum to less than one.
 *
 * @param plan how it was sampled
 * @param probability share of the draws that hold, 0 to 1
 * @param standardError of the probability
 * @param leastMargin least margin at the 5th, 50th and 95th hundredth of the draws
 * @param measureFirst what contributes to the doubt, most first; what is known exactly is left out
 */
public record HoldingChance(
    SamplingPlan plan,
    double probability,
    double standardError,
    Band leastMargin,
    List<Contribution> measureFirst) {

  private static final int GROUPS = 20;
  private static final int LEAST_A_GROUP = 25;

  /** Copies the list. */
  public HoldingChance {
    measureFirst = List.copyOf(measureFirst);
  }

  /**
   * Samples a set-up.
   *
   * @param setup a checked set-up
   * @param plan how to sample
   * @return empty if the cutter passes beside the stock
   * @throws OutsideValidity if an input is outside the range of the formulas
   */
  public static Optional<HoldingChance> of(Setup setup, SamplingPlan plan) {
    JointSample sample = JointSample.of(setup, plan.samples(), plan.seed());
    return DrawnCut.of(setup, sample).map(cut -> of(cut, plan));
  }

  /**
   * The chance of a cut that was drawn already.
   *
   * @throws OutsideValidity if an input of the hold is outside the range of the formulas
   */
  public static HoldingChance of(DrawnCut cut, SamplingPlan plan) {
    cut.checkHold();
    int n = cut.sample().draws();
    double[] least = new double[n];
    int holds = 0;
    for (int draw = 0; draw < n; draw++) {
      DrawnHold.State state = cut.state(draw);
      least[draw] = state == null ? 0 : state.margins().least();
      holds += state != null && state.holds() && least[draw] >= plan.leastMargin() ? 1 : 0;
    }
    double toHalf = (holds + 1.0) / (n + 2.0);
    double[] sorted = least.clone();
    Arrays.sort(sorted);
    return new HoldingChance(
        plan,
        (double) holds / n,
        Math.sqrt(toHalf * (1 - toHalf) / n),
        new Band(sorted[n / 20], sorted[n / 2], sorted[n - 1 - n / 20]),
        contributions(cut.sample(), least));
  }

  private static List<Contribution> contributions(JointSample sample, double[] least) {
    CorrelationRatio ratio =
        new CorrelationRatio(least, Math.min(GROUPS, least.length / LEAST_A_GROUP));
    return Arrays.stream(Unknown.values())
        .filter(unknown -> unknown.decidesTheHold() && !sample.isExact(unknown))
        .map(unknown -> new Contribution(unknown, ratio.of(sample.order(unknown))))
        .sorted(Comparator.comparingDouble(Contribution::share).reversed())
        .toList();
  }
}
