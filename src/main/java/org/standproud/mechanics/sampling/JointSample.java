package org.standproud.mechanics.sampling;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.DoubleSupplier;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.random.Well19937c;
import org.hipparchus.special.Erf;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/**
 * The draws of all unknowns of one set-up.
 *
 * <p>The points are a Sobol sequence (Joe and Kuo 2008, as Hipparchus has it), every dimension
 * shifted by one random part of the unit and wrapped round (Cranley and Patterson 1976, from
 * memory). The shift hangs on the seed alone and not on the set-up: two set-ups that differ in one
 * input then differ by that input and not by the luck of their draws, what is mirrored stays
 * mirrored, and a replay gives the same bytes.
 *
 * <p>What belongs together is drawn together by a normal copula, see {@link #CORRELATED}.
 */
public final class JointSample {

  /** The seed of the evidence. */
  public static final long SEED = 20_261_125L;

  /** One unknown that leans on an earlier one: rank correlation about the given coefficient. */
  private record Leaning(Unknown unknown, Unknown on, double correlation) {}

  /**
   * What is drawn together. Tables that give a higher kc1.1 for one stock give a lower mc, so that
   * kc near a chip of 0.1 mm is the same (the rows of one grade in the German tables); a dull edge
   * thrusts harder, is rounder and tears; two jaws of one vise are of one make. Coefficients:
   * common practice, no source.
   */
  private static final Leaning[] CORRELATED = {
    new Leaning(Unknown.EXPONENT, Unknown.SPECIFIC_FORCE, -0.95),
    new Leaning(Unknown.NORMAL_RATIO, Unknown.WEAR, 0.7),
    new Leaning(Unknown.EDGE_ROUNDING, Unknown.WEAR, 0.9),
    new Leaning(Unknown.ROUGHENING, Unknown.WEAR, 0.7),
    new Leaning(Unknown.LAND, Unknown.WEAR, 0.9),
    new Leaning(Unknown.MOVABLE_JAW, Unknown.FIXED_JAW, 0.5)
  };

  private static final Points USUAL = Points.of(Sample.DRAWS, SEED);

  private final int draws;
  private final Points points;
  private final double[][] values = new double[Unknown.values().length][];
  private final Map<Unknown, Distribution> distributions;
  private final @Nullable OutsideValidity refusal;

  private JointSample(Catalogue catalogue, Points points) {
    this.distributions = catalogue.all();
    this.refusal = catalogue.refusal();
    this.points = points;
    this.draws = points.draws;
    distributions.forEach((unknown, d) -> values[unknown.ordinal()] = points.values(unknown, d));
  }

  /** The draws of a set-up for its evidence. */
  public static JointSample of(Setup setup) {
    return new JointSample(Catalogue.of(setup), USUAL);
  }

  /**
   * Draws of a set-up.
   *
   * @param setup the set-up
   * @param draws how many
   * @param seed of the shift
   */
  public static JointSample of(Setup setup, int draws, long seed) {
    return new JointSample(
        Catalogue.of(setup),
        draws == Sample.DRAWS && seed == SEED ? USUAL : Points.of(draws, seed));
  }

  /**
   * Draws of a set-up at plain pseudo-random points, WELL19937c: what the sequence is checked
   * against.
   *
   * @param setup the set-up
   * @param draws how many
   * @param seed of the generator
   */
  public static JointSample random(Setup setup, int draws, long seed) {
    RandomGenerator random = new Well19937c(seed);
    return new JointSample(Catalogue.of(setup), Points.of(draws, random::nextDouble));
  }

  /**
   * Refuses a set-up of which not everything can be drawn.
   *
   * @throws OutsideValidity if an input is outside the range of a formula
   */
  public void check() {
    if (refusal != null) {
      throw refusal;
    }
  }

  /** How many draws there are. */
  public int draws() {
    return draws;
  }

  /** Whether an unknown is known after all. */
  public boolean isExact(Unknown unknown) {
    return distribution(unknown).isExact();
  }

  /** The distribution of an unknown. */
  public Distribution distribution(Unknown unknown) {
    Distribution distribution = distributions.get(unknown);
    if (distribution == null) {
      throw new IllegalArgumentException("no distribution of " + unknown);
    }
    return distribution;
  }

  /** The value of an unknown in a draw. */
  public double at(Unknown unknown, int draw) {
    return of(unknown)[draw];
  }

  /** Least, middle and greatest value of an unknown over the draws. */
  Band range(Unknown unknown) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : of(unknown)) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    return low == high ? Band.exactly(low) : Band.between(low, high);
  }

  /** The values of an unknown, one a draw; not to be written to. */
  double[] of(Unknown unknown) {
    double[] all = values[unknown.ordinal()];
    if (all == null) {
      throw new IllegalArgumentException("no draws of " + unknown);
    }
    return all;
  }

  /** The draws in the order of the value of an unknown, the lesser draw first where equal. */
  int[] order(Unknown unknown) {
    return points.order(unknown, of(unknown));
  }

  /** Shares and normal deviates of each unknown in each draw. */
  private static final class Points {
    private final int draws;
    private final double[][] shares;
    private final double[][] normals;

    /** The draws of each unknown by its deviate, sorted when first asked for. */
    private final AtomicReferenceArray<int[]> orders;

    private Points(int draws, double[][] shares, double[][] normals) {
      this.draws = draws;
      this.shares = shares;
      this.normals = normals;
      this.orders = new AtomicReferenceArray<>(normals.length);
    }

    static Points of(int draws, long seed) {
      int unknowns = Unknown.values().length;
      SobolSequenceGenerator sobol = new SobolSequenceGenerator(unknowns);
      RandomGenerator random = new Well19937c(seed);
      double[] shift = new double[unknowns];
      Arrays.setAll(shift, u -> random.nextDouble());
      double[][] normals = new double[unknowns][draws];
      for (int draw = 0; draw < draws; draw++) {
        double[] point = sobol.nextVector();
        for (int u = 0; u < unknowns; u++) {
          double share = (point[u] + shift[u]) % 1;
          normals[u][draw] = normal(Math.max(1e-9, Math.min(1 - 1e-9, share)));
        }
      }
      return leaning(draws, normals);
    }

    static Points of(int draws, DoubleSupplier share) {
      double[][] normals = new double[Unknown.values().length][draws];
      for (double[] of : normals) {
        Arrays.setAll(of, draw -> normal(Math.max(1e-9, Math.min(1 - 1e-9, share.getAsDouble()))));
      }
      return leaning(draws, normals);
    }

    private static Points leaning(int draws, double[][] normals) {
      int unknowns = normals.length;
      for (Leaning lean : CORRELATED) {
        lean(normals[lean.unknown.ordinal()], normals[lean.on.ordinal()], lean.correlation);
      }
      double[][] shares = new double[unknowns][draws];
      for (int u = 0; u < unknowns; u++) {
        for (int draw = 0; draw < draws; draw++) {
          shares[u][draw] = (1 + Erf.erf(normals[u][draw] / Math.sqrt(2))) / 2;
        }
      }
      return new Points(draws, shares, normals);
    }

    private static void lean(double[] normals, double[] on, double correlation) {
      double rest = Math.sqrt(1 - correlation * correlation);
      for (int draw = 0; draw < normals.length; draw++) {
        normals[draw] = correlation * on[draw] + rest * normals[draw];
      }
    }

    private static double normal(double share) {
      return Math.sqrt(2) * Erf.erfInv(2 * share - 1);
    }

    double[] values(Unknown unknown, Distribution distribution) {
      double[] all = new double[draws];
      distribution.fill(shares[unknown.ordinal()], normals[unknown.ordinal()], all);
      return all;
    }

    /** Values rise with their deviates, so that only equal ones are left to be put in order. */
    int[] order(Unknown unknown, double[] values) {
      int[] order = orders.get(unknown.ordinal());
      if (order == null) {
        order = CorrelationRatio.order(normals[unknown.ordinal()]);
        orders.set(unknown.ordinal(), order);
      }
      int[] own = order;
      for (int from = 0; from < draws; ) {
        int to = from + 1;
        while (to < draws && values[own[to]] == values[own[from]]) {
          to++;
        }
        if (to - from > 1) {
          own = own == order ? order.clone() : own;
          Arrays.sort(own, from, to);
        }
        if (to < draws && !(values[own[to]] > values[own[from]])) {
          return CorrelationRatio.order(values);
        }
        from = to;
      }
      return own;
    }
  }
}
