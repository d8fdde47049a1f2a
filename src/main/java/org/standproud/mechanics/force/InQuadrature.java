package org.standproud.mechanics.force;

import org.standproud.setup.Band;

/**
 * The product of independent positive factors, their scatter put together in quadrature.
 *
 * <p>With likely values x_i and reaches u_i = ln(high_i / x_i) upward, d_i = ln(x_i / low_i)
 * downward: likely = prod x_i, high = likely exp(sqrt(sum u_i^2)), low = likely exp(-sqrt(sum
 * d_i^2)). The law of propagation of uncertainty for a product of independent inputs, JCGM 100:2008
 * (GUM) 5.1.2 and 5.1.6, on a logarithmic scale; from memory. Not for unknowns that a caller could
 * have given: those keep their whole range.
 */
final class InQuadrature {

  private InQuadrature() {}

  /**
   * The product.
   *
   * @param factors without unit, over zero
   * @throws IllegalArgumentException if a factor may be zero or negative
   */
  static Band product(Band... factors) {
    double likely = 1;
    double up = 0;
    double down = 0;
    for (Band factor : factors) {
      if (!(factor.low() > 0)) {
        throw new IllegalArgumentException("a factor must be over zero: " + factor);
      }
      likely *= factor.likely();
      up += square(Math.log(factor.high() / factor.likely()));
      down += square(Math.log(factor.likely() / factor.low()));
    }
    return new Band(likely * Math.exp(-Math.sqrt(down)), likely, likely * Math.exp(Math.sqrt(up)));
  }

  private static double square(double x) {
    return x * x;
  }
}
