package org.standproud.mechanics.sampling;

import java.util.Arrays;
import org.standproud.setup.Band;

/** The distribution of one unknown, by the value below which a share of it lies. */
public sealed interface Distribution {

  /**
   * The value below which a share of the distribution lies.
   *
   * @param share over 0, under 1
   * @param normal the same share as a deviate of the standard normal distribution
   */
  double at(double share, double normal);

  /**
   * The values below which many shares lie.
   *
   * @param shares the shares
   * @param normals the same shares as deviates of the standard normal distribution
   * @param values filled, one for each share
   */
  default void fill(double[] shares, double[] normals, double[] values) {
    for (int i = 0; i < values.length; i++) {
      values[i] = at(shares[i], normals[i]);
    }
  }

  /** Whether there is only one value. */
  default boolean isExact() {
    return false;
  }

  /** A value that is known. */
  static Distribution exactly(double value) {
    return new Exact(value);
  }

  /**
   * The triangular distribution over a band: nothing beyond its ends, most at its likely value
   * (JCGM 100:2008 4.3.9, from memory).
   */
  static Distribution over(Band band) {
    return band.isExact() ? new Exact(band.likely()) : new Triangular(band);
  }

  /** A value that is known. */
  record Exact(double value) implements Distribution {
    @Override
    public double at(double share, double normal) {
      return value;
    }

    @Override
    public void fill(double[] shares, double[] normals, double[] values) {
      Arrays.fill(values, value);
    }

    @Override
    public boolean isExact() {
      return true;
    }
  }

  /** The triangular distribution over a band. */
  record Triangular(Band band) implements Distribution {
    @Override
    public double at(double share, double normal) {
      return Triangle.at(band, share);
    }

    @Override
    public void fill(double[] shares, double[] normals, double[] values) {
      Triangle.fill(band, shares, values);
    }
  }

  /** Every value between two ends alike. */
  record Uniform(double low, double high) implements Distribution {
    @Override
    public double at(double share, double normal) {
      return low + share * (high - low);
    }
  }

  /**
   * The logarithm is normal, cut off at a greatest value.
   *
   * @param median the median
   * @param sigma standard deviation of the natural logarithm
   * @param greatest values beyond count as this
   */
  record Lognormal(double median, double sigma, double greatest) implements Distribution {
    @Override
    public double at(double share, double normal) {
      return Math.min(greatest, median * Math.exp(sigma * normal));
    }
  }
}
