package org.standproud.mechanics.evidence;

import java.util.Arrays;
import java.util.function.DoublePredicate;
import org.hipparchus.random.Well19937c;
import org.hipparchus.util.MathArrays;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;

/**
 * The values of one number over the draws of one joint sample, in the SI unit of the number. A
 * number known exactly has one value, which counts for every draw. NaN in a draw means that the
 * number does not exist there, because the set-up lets go in that draw; percentiles are of the
 * draws in which it exists. Immutable.
 */
public final class Sample {

  /** How many draws a joint sample has, unless a caller asks for another number. */
  public static final int DRAWS = 256;

  /** The share of draws below the lower percentile of {@link #band()}. */
  public static final double LOW = 0.05;

  /** The share of draws below the upper percentile of {@link #band()}. */
  public static final double HIGH = 0.95;

  private final double[] values;
  private final int there;

  /** Sorted when first asked for; two threads may both do so, to the same numbers. */
  private double @Nullable [] sorted;

  private @Nullable Band band;

  private Sample(double[] values) {
    this.values = values;
    int count = 0;
    for (double value : values) {
      if (Double.isInfinite(value)) {
        throw new IllegalArgumentException("a sample needs finite values");
      }
      count += Double.isNaN(value) ? 0 : 1;
    }
    this.there = count;
    if (count == 0) {
      throw new IllegalArgumentException("a sample needs a value in at least one draw");
    }
  }

  private double[] sorted() {
    double[] known = sorted;
    if (known == null) {
      known = values.clone();
      // NaN sorts last.
      Arrays.sort(known);
      known = there == known.length ? known : Arrays.copyOf(known, there);
      sorted = known;
    }
    return known;
  }

  /**
   * A number that is the same in every draw.
   *
   * @param value a finite number
   */
  public static Sample exactly(double value) {
    return new Sample(new double[] {value});
  }

  /**
   * One value a draw.
   *
   * @param values finite, or NaN where the number does not exist; at least one is finite
   * @throws IllegalArgumentException if none is finite or one is infinite
   */
  public static Sample of(double[] values) {
    return new Sample(values.clone());
  }

  /**
   * A number of which only three percentiles are known: straight lines between them, and the tails
   * at the outer two, so that {@link #band()} gives the percentiles back. The draws are put in an
   * order of their own for each stream, so that numbers of different streams are independent.
   *
   * @param band 5th, 50th and 95th percentile
   * @param stream which order of the draws
   */
  public static Sample spread(Band band, int stream) {
    if (band.isExact()) {
      return exactly(band.likely());
    }
    int[] order = MathArrays.natural(DRAWS);
    MathArrays.shuffle(order, new Well19937c(stream));
    double[] values = new double[DRAWS];
    for (int draw = 0; draw < DRAWS; draw++) {
      double share = nearest(order[draw] / (DRAWS - 1.0));
      values[draw] =
          share <= 0.5
              ? between(band.low(), band.likely(), (share - LOW) / (0.5 - LOW))
              : between(band.likely(), band.high(), (share - 0.5) / (HIGH - 0.5));
    }
    return new Sample(values);
  }

  /** The two draws about a percentile are both at it, so that the sample gives it back. */
  private static double nearest(double share) {
    for (double percentile : new double[] {LOW, 0.5, HIGH}) {
      if (Math.abs(share - percentile) < 1.0 / (DRAWS - 1)) {
        return percentile;
      }
    }
    return share;
  }

  private static double between(double from, double to, double way) {
    return from + Math.max(0, Math.min(1, way)) * (to - from);
  }

  /** The value in a draw; NaN where the number does not exist. */
  public double at(int draw) {
    return values.length == 1 ? values[0] : values[draw];
  }

  /** How many values there are; 1 for a number that is the same in every draw. */
  public int size() {
    return values.length;
  }

  /** Whether the number is the same in every draw. */
  public boolean isExact() {
    double[] all = sorted();
    return all[0] == all[all.length - 1] && all.length == values.length;
  }

  /** 5th, 50th and 95th percentile of the draws in which the number exists. */
  public Band band() {
    Band known = band;
    if (known == null) {
      known = new Band(quantile(LOW), quantile(0.5), quantile(HIGH));
      band = known;
    }
    return known;
  }

  /** The share of draws in which the number exists, over 0 to 1. */
  public double share() {
    return (double) there / values.length;
  }

  /** The share of all draws in which the number exists and satisfies a condition, 0 to 1. */
  public double share(DoublePredicate condition) {
    return (double) Arrays.stream(sorted()).filter(condition).count() / values.length;
  }

  /**
   * The value below which a share of the draws lies, of those in which the number exists; between
   * two draws by straight line (type 7 of Hyndman and Fan, The American Statistician 50 (1996) 361,
   * from memory).
   *
   * @param share 0 to 1
   */
  public double quantile(double share) {
    double[] sorted = sorted();
    double place = share * (sorted.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(below + 1, sorted.length - 1);
    double value = sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    return Math.max(sorted[below], Math.min(sorted[above], value));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Sample sample && Arrays.equals(values, sample.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return "Sample of " + values.length + ": " + band();
  }
}
