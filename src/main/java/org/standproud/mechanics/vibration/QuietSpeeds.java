package org.standproud.mechanics.vibration;

import org.standproud.mechanics.OutsideValidity;

/**
 * Spindle speeds at which no low harmonic of the tooth blows falls near the first natural frequency
 * f of the stock. With z teeth and n turns in a second the harmonic k strikes at k z n. Quiet are z
 * n = 1.5 f, above the first harmonic; z n = f / 1.5 and z n = f / 2.5, midway between two
 * harmonics; and z n = 0.8 f / 4, below the fourth, past which a blow carries little force. At each
 * of them every one of the four harmonics lies at least a fifth of f away from f, where a driven
 * mass is magnified by 1 / |1 - r^2| of less than 3 (Den Hartog, Mechanical Vibrations, 4th
 * edition, 1956, from memory).
 *
 * <p>Valid for a stock whose first mode rules; damping and higher modes are left out.
 *
 * @param slowerRevPerS greatest quiet speed not above the set one in 1/s; the set one if it lies
 *     below them all
 * @param fasterRevPerS least quiet speed not below the set one in 1/s; the set one if it lies above
 *     them all
 */
public record QuietSpeeds(double slowerRevPerS, double fasterRevPerS) {

  private static final double[] BLOWS_OVER_NATURAL = {0.8 / 4, 1 / 2.5, 1 / 1.5, 1.5};

  /**
   * The quiet speeds on both sides of a speed.
   *
   * @param naturalHz f in Hz, 0.1 to 1e6
   * @param teeth z, 1 to 200
   * @param speedRevPerS the set speed in 1/s, 0 to 4000
   * @throws OutsideValidity if an input is out of its range
   */
  public static QuietSpeeds around(double naturalHz, int teeth, double speedRevPerS) {
    OutsideValidity.within("natural frequency", naturalHz, 0.1, 1e6, "Hz");
    OutsideValidity.within("teeth", teeth, 1, 200, "");
    OutsideValidity.within("spindle speed", speedRevPerS, 0, 4000, "1/s");
    double slower = Double.NEGATIVE_INFINITY;
    double faster = Double.POSITIVE_INFINITY;
    for (double ratio : BLOWS_OVER_NATURAL) {
      double quiet = ratio * naturalHz / teeth;
      if (quiet <= speedRevPerS) {
        slower = Math.max(slower, quiet);
      }
      if (quiet >= speedRevPerS) {
        faster = Math.min(faster, quiet);
      }
    }
    return new QuietSpeeds(
        Double.isInfinite(slower) ? speedRevPerS : slower,
        Double.isInfinite(faster) ? speedRevPerS : faster);
  }
}
