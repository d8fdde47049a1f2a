package org.standproud.mechanics.sampling;

import java.util.Comparator;
import java.util.stream.IntStream;
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

  /** The draws in the order of an input, the lesser draw first where it is equal. */
  static int[] order(double[] input) {
    return IntStream.range(0, input.length)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> input[i]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /**
   * The share of an input, 0 to 1; nothing if the outcome never changes.
   *
   * @param order the draws in the order of the input
   */
  double of(int[] order) {
    if (variance == 0) {
      return 0;
    }
    int n = order.length;
    double[] means = new double[groups];
    for (int g = 0; g < groups; g++) {
      int from = g * n / groups;
      int to = (g + 1) * n / groups;
      double sum = 0;
      for (int i = from; i < to; i++) {
        sum += ranks[order[i]];
      }
      means[g] = sum / (to - from);
    }
    double raw = new Variance(false).evaluate(means) / variance;
    double noise = (double) groups / n;
    return Math.max(0, Math.min(1, (raw - noise) / (1 - noise)));
  }
}
