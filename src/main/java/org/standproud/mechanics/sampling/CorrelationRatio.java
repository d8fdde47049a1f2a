package org.standproud.mechanics.sampling;

import java.util.Arrays;
import org.hipparchus.stat.descriptive.moment.Variance;
import org.hipparchus.stat.ranking.NaturalRanking;

/**
 * The share of the variance of an outcome's rank that goes with one input: variance of the means of
 * equal groups by that input over the whole variance (Pearson's correlation ratio, the first-order
 * index by grouping), less what groups of pure noise would show.
 */
final class CorrelationRatio {

  private final double[] ranks;
  private final double variance;
  private final int groups;

  CorrelationRatio(double[] outcome, int groups) {
    this.ranks = new NaturalRanking().rank(outcome);
    this.variance = new Variance(false).evaluate(ranks);
    this.groups = groups;
  }

  /**
   * The share of an input, 0 to 1; nothing if the outcome never changes.
   *
   * @param input its value in each draw
   */
  double of(double[] input) {
    if (variance == 0) {
      return 0;
    }
    int n = input.length;
    double[] values = input.clone();
    Arrays.sort(values);
    double[] byInput = new double[n];
    int[] taken = new int[n];
    for (int i = 0; i < n; i++) {
      // Equal values keep the order of their draws.
      int first = firstOf(values, input[i]);
      byInput[first + taken[first]++] = ranks[i];
    }
    double[] means = new double[groups];
    for (int g = 0; g < groups; g++) {
      int from = g * n / groups;
      int to = (g + 1) * n / groups;
      double sum = 0;
      for (int i = from; i < to; i++) {
        sum += byInput[i];
      }
      means[g] = sum / (to - from);
    }
    double raw = new Variance(false).evaluate(means) / variance;
    double noise = (double) groups / n;
    return Math.max(0, Math.min(1, (raw - noise) / (1 - noise)));
  }

  /** The first place of a value among sorted ones. */
  private static int firstOf(double[] sorted, double value) {
    int low = 0;
    int high = sorted.length - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (Double.compare(sorted[middle], value) < 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
