package org.standproud.mechanics.plate;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Legendre polynomials made orthonormal on -1..1, with their first two derivatives and the
 * integrals of their products.
 *
 * <p>{@code p_n(t) = sqrt(n + 1/2) P_n(t)}, by the recurrences {@code n P_n = (2n-1) t P_(n-1) -
 * (n-1) P_(n-2)} and {@code P'_n = P'_(n-2) + (2n-1) P_(n-1)} (Abramowitz and Stegun, Handbook of
 * Mathematical Functions, chapters 8 and 22, from memory). The integrals are taken by Gauss and
 * Legendre with enough points to be exact. All numbers are pure numbers.
 */
final class Legendre {

  /** Number of polynomials in the tables: degrees 0 to 31. */
  static final int COUNT = 32;

  /** Integrals over -1..1 of p_i'' p_j''. */
  static final double[][] CURVATURES;

  /** Integrals over -1..1 of p_i'' p_j. */
  static final double[][] CURVATURE_BY_VALUE;

  /** Integrals over -1..1 of p_i' p_j'. */
  static final double[][] SLOPES;

  private static final double[] NODES = new double[COUNT + 1];
  private static final double[] WEIGHTS = new double[COUNT + 1];

  static {
    GaussIntegrator gauss = new GaussIntegratorFactory().legendre(COUNT + 1);
    CURVATURES = new double[COUNT][COUNT];
    CURVATURE_BY_VALUE = new double[COUNT][COUNT];
    SLOPES = new double[COUNT][COUNT];
    for (int g = 0; g < NODES.length; g++) {
      NODES[g] = gauss.getPoint(g);
      WEIGHTS[g] = gauss.getWeight(g);
      double[] value = values(NODES[g], COUNT);
      double[] slope = slopes(NODES[g], COUNT);
      double[] curvature = curvatures(NODES[g], COUNT);
      addProducts(CURVATURES, WEIGHTS[g], curvature, curvature);
      addProducts(CURVATURE_BY_VALUE, WEIGHTS[g], curvature, value);
      addProducts(SLOPES, WEIGHTS[g], slope, slope);
    }
  }

  private Legendre() {}

  private static void addProducts(double[][] to, double weight, double[] left, double[] right) {
    for (int i = 0; i < left.length; i++) {
      for (int j = 0; j < right.length; j++) {
        to[i][j] += weight * left[i] * right[j];
      }
    }
  }

  /**
   * Integrals of p_i p_j over the middle part -reach..reach, for the polynomials of one parity.
   *
   * @param reach half-width of the part, in 0..1
   * @param parity 0 for the even polynomials, 1 for the odd ones
   * @param terms how many polynomials of that parity
   */
  static double[][] valuesOverMiddle(double reach, int parity, int terms) {
    double[][] integrals = new double[terms][terms];
    double[] taken = new double[terms];
    for (int g = 0; g < NODES.length; g++) {
      double[] value = values(reach * NODES[g], 2 * terms);
      for (int i = 0; i < terms; i++) {
        taken[i] = value[2 * i + parity];
      }
      addProducts(integrals, reach * WEIGHTS[g], taken, taken);
    }
    return integrals;
  }

  /** The first {@code count} polynomials at {@code t}. */
  static double[] values(double t, int count) {
    double[] p = plainValues(t, count);
    normalise(p);
    return p;
  }

  /** Their first derivatives at {@code t}. */
  static double[] slopes(double t, int count) {
    double[] d = derivative(plainValues(t, count));
    normalise(d);
    return d;
  }

  /** Their second derivatives at {@code t}. */
  static double[] curvatures(double t, int count) {
    double[] d = derivative(derivative(plainValues(t, count)));
    normalise(d);
    return d;
  }

  private static double[] plainValues(double t, int count) {
    double[] p = new double[count];
    for (int n = 0; n < count; n++) {
      p[n] =
          switch (n) {
            case 0 -> 1;
            case 1 -> t;
            default -> ((2 * n - 1) * t * p[n - 1] - (n - 1) * p[n - 2]) / n;
          };
    }
    return p;
  }

  private static double[] derivative(double[] p) {
    double[] d = new double[p.length];
    for (int n = 1; n < p.length; n++) {
      d[n] = (n > 1 ? d[n - 2] : 0) + (2 * n - 1) * p[n - 1];
    }
    return d;
  }

  private static void normalise(double[] p) {
    for (int n = 0; n < p.length; n++) {
      p[n] *= Math.sqrt(n + 0.5);
    }
  }
}
