package org.standproud.mechanics.sampling;

import java.util.Arrays;
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
    int[] order =
        IntStream.range(0, n)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> input[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    double[] means = new double[groups];
    for (int g = 0; g < groups; g++) {
      int from = g * n / groups;
      int to = (g + 1) * n / groups;
      means[g] = Arrays.stream(order, from, to).mapToDouble(i -> ranks[i]).average().orElseThrow();
    }
    double raw = new Variance(false).evaluate(means) / variance;
    double noise = (double) groups / n;
    return Math.max(0, Math.min(1, (raw - noise) / (1 - noise)));
  }
}
