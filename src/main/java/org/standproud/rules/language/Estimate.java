package org.standproud.rules.language;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.setup.Band;

/** The value of an expression: a number over the draws of the joint sample, or none. */
public sealed interface Estimate {

  /** A number over the draws, in SI; a single value if it is the same in each. */
  final class Known implements Estimate {
    /** No number, because the set-up lets go in every draw. */
    static final Known NOWHERE = new Known(new double[] {Double.NaN}, false, null, null);

    private final double[] values;
    private final @Nullable String gap;
    private final boolean whole;
    private @Nullable Sample sample;

    private Known(double[] values, boolean whole, @Nullable String gap, @Nullable Sample sample) {
      this.values = values;
      this.whole = whole;
      this.gap = gap;
      this.sample = sample;
    }

    /** A number that is the same in every draw. */
    public static Known exactly(double value) {
      return new Known(new double[] {value}, true, null, null);
    }

    /** The number of a fact. */
    static Known of(Sample sample) {
      double[] values = new double[sample.size()];
      for (int draw = 0; draw < values.length; draw++) {
        values[draw] = sample.at(draw);
      }
      return new Known(values, sample.share() == 1, null, sample);
    }

    /** Number of values; 1 if it is the same in every draw. */
    public int size() {
      return values.length;
    }

    /**
     * The value in a draw: NaN where the set-up lets go, so that the number does not exist;
     * infinite where it cannot be computed.
     *
     * @param draw index of the draw
     * @param draws number of draws
     */
    public double at(int draw, int draws) {
      if (values.length == draws) {
        return values[draw];
      }
      return values[values.length == 1 ? 0 : (int) ((long) draw * values.length / draws)];
    }

    /** Whether there is a number in every draw. */
    public boolean isWhole() {
      return whole;
    }

    /** Why some draws have no number, or null if all have one or the set-up lets go there. */
    @Nullable String gap() {
      return gap;
    }

    /** Whether at least one draw has a number. */
    public boolean isAnywhere() {
      for (double value : values) {
        if (Double.isFinite(value)) {
          return true;
        }
      }
      return false;
    }

    /** The numbers of the draws in which it can be computed; at least one. */
    public Sample sample() {
      Sample known = sample;
      if (known == null) {
        double[] finite = values.clone();
        for (int i = 0; i < finite.length; i++) {
          finite[i] = Double.isFinite(finite[i]) ? finite[i] : Double.NaN;
        }
        known = Sample.of(finite);
        sample = known;
      }
      return known;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Known known && Arrays.equals(values, known.values);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(values);
    }

    /** 5th, 50th and 95th percentile of the draws with a number. */
    public Band band() {
      return values.length == 1 ? Band.exactly(values[0]) : sample().band();
    }
  }

  /**
   * No number.
   *
   * @param reason the reason, as a machinist would put it
   */
  record Unknown(String reason) implements Estimate {}

  /**
   * The estimate from some values.
   *
   * @param values one for each draw or one for all: NaN where the set-up lets go, infinite where
   *     the value cannot be computed
   * @param gap why a value may be infinite
   */
  static Estimate of(double[] values, String gap) {
    int infinite = 0;
    boolean whole = true;
    for (double value : values) {
      infinite += Double.isInfinite(value) ? 1 : 0;
      whole &= Double.isFinite(value);
    }
    return infinite == values.length
        ? new Unknown(gap)
        : new Known(values, whole, infinite > 0 ? gap : null, null);
  }
}
