package org.standproud.mechanics.sampling;

import java.util.Arrays;
import org.standproud.setup.Band;

/**
 * The triangular distribution over a band: nothing beyond its ends, most at its likely value. Drawn
 * by its inverse: with c = (likely - low)/(high - low), {@code low + sqrt(u c) w} for u under c,
 * else {@code high - sqrt((1 - u)(1 - c)) w}, w the width of the band.
 */
final class Triangle {

  private Triangle() {}

  /**
   * The value below which a share of the distribution lies.
   *
   * @param band the band
   * @param share u, 0 to 1
   */
  static double at(Band band, double share) {
    double width = band.width();
    return width == 0
        ? band.likely()
        : at(band, width, (band.likely() - band.low()) / width, share);
  }

  /**
   * The values below which many shares lie.
   *
   * @param band the band
   * @param shares u of each, 0 to 1
   * @param values filled, one for each share
   */
  static void fill(Band band, double[] shares, double[] values) {
    double width = band.width();
    if (width == 0) {
      Arrays.fill(values, band.likely());
      return;
    }
    double turn = (band.likely() - band.low()) / width;
    for (int i = 0; i < values.length; i++) {
      values[i] = at(band, width, turn, shares[i]);
    }
  }

  private static double at(Band band, double width, double turn, double share) {
    double value =
        share < turn
            ? band.low() + Math.sqrt(share * turn) * width
            : band.high() - Math.sqrt((1 - share) * (1 - turn)) * width;
    return Math.max(band.low(), Math.min(band.high(), value));
  }
}
