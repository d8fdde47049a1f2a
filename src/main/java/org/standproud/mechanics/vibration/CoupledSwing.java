package org.standproud.mechanics.vibration;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;

/**
 * How stock and cutter swing together under the blows of the teeth, with phases.
 *
 * <p>Across the feed the force F on the stock moves the stock by {@code G_stock F} and the cutter
 * by {@code -G_cutter F}, harmonic by harmonic of the turn (any textbook of vibration). Modes and
 * harmonics are added with their phases, so that the peak is the true one of the linear answer, not
 * the sum of peaks. What the modes leave of the static give follows the force without delay. For
 * equal teeth the steady motion repeats with every tooth, so that the chip stays what the feed
 * makes it and nothing regenerates (checked against a simulation in time with loss of contact); it
 * is the answer only below the limit of chatter. Immutable.
 */
public final class CoupledSwing {

  /** Harmonics weaker than this part of the strongest are left out. */
  private static final double WEAK = 1e-4;

  private final double[] stockCos;
  private final double[] stockSin;
  private final double[] cutterCos;
  private final double[] cutterSin;
  private final double stockPeakM;
  private final double relativePeakM;

  private CoupledSwing(int harmonics, int steps, ForceHarmonics forceN, double[][] gains) {
    stockCos = new double[harmonics + 1];
    stockSin = new double[harmonics + 1];
    cutterCos = new double[harmonics + 1];
    cutterSin = new double[harmonics + 1];
    for (int k = 0; k <= harmonics; k++) {
      double a = forceN.cos(k);
      double b = forceN.sin(k);
      double[] g = gains[k];
      // a cos + b sin is the real part of (a - i b) e^(i k theta).
      stockCos[k] = g[0] * a + g[1] * b;
      stockSin[k] = g[0] * b - g[1] * a;
      cutterCos[k] = -(g[2] * a + g[3] * b);
      cutterSin[k] = -(g[2] * b - g[3] * a);
    }
    this.stockPeakM = peak(stockCos, stockSin, new double[harmonics + 1], steps);
    double[] relativeCos = new double[harmonics + 1];
    double[] relativeSin = new double[harmonics + 1];
    for (int k = 0; k <= harmonics; k++) {
      relativeCos[k] = cutterCos[k] - stockCos[k];
      relativeSin[k] = cutterSin[k] - stockSin[k];
    }
    this.relativePeakM = peak(relativeCos, relativeSin, new double[harmonics + 1], steps);
  }

  /**
   * The swing.
   *
   * @param forceOnStockN force on the stock across the feed over a turn, feed frame
   * @param cutter modes of the cutter across the feed
   * @param cutterMPerN static give of the cutter there, m/N
   * @param stock modes of the stock across the feed
   * @param stockMPerN static give of the stock there, m/N
   * @param revPerS spindle speed, 1/s, 0.01 to 10000
   * @throws OutsideValidity if a value is out of range
   */
  public static CoupledSwing of(
      ForceHarmonics forceOnStockN,
      ModeSet cutter,
      double cutterMPerN,
      ModeSet stock,
      double stockMPerN,
      double revPerS) {
    within("spindle speed", revPerS, 1e-2, 1e4, "1/s");
    within("give of the cutter", cutterMPerN, 0, 1, "m/N");
    within("give of the stock", stockMPerN, 0, 1, "m/N");
    int harmonics = forceOnStockN.highest();
    double restStock = Math.max(0, stockMPerN - stock.staticMPerN());
    double restCutter = Math.max(0, cutterMPerN - cutter.staticMPerN());
    double[][] gains = new double[harmonics + 1][4];
    for (int k = 0; k <= harmonics; k++) {
      stock.respond(k * revPerS, gains[k], 0);
      cutter.respond(k * revPerS, gains[k], 2);
      gains[k][0] += restStock;
      gains[k][2] += restCutter;
    }
    return new CoupledSwing(harmonics, Math.max(64, 4 * harmonics), forceOnStockN, gains);
  }

  /** Greatest swing of the stock to one side of its mean, m. */
  public double stockPeakM() {
    return stockPeakM;
  }

  /** Greatest swing of the cutter against the stock to one side of the mean, m. */
  public double relativePeakM() {
    return relativePeakM;
  }

  /** Where the stock stands beside its unloaded place at an angle of the spindle, m, +y'. */
  public double stockAtM(double thetaRad) {
    return at(stockCos, stockSin, thetaRad);
  }

  /** Where the cutter stands against the stock at an angle of the spindle, m, +y'. */
  public double relativeAtM(double thetaRad) {
    return at(cutterCos, cutterSin, thetaRad) - at(stockCos, stockSin, thetaRad);
  }

  /**
   * Surface location error: metal taken off a side-milled wall beyond what was set, m; negative
   * where metal is left standing.
   *
   * <p>The wall is made by a tooth as it passes the normal of the wall: at phi = 0 in conventional
   * milling, where the wall lies at +y', and at phi = pi in climb milling, where it lies at -y'. A
   * cutter that stands {@code u} toward +y' against the stock at that moment cuts {@code u cos phi}
   * too deep (Schmitz and Smith, Machining Dynamics; Altintas 2012; from memory).
   *
   * @param thetaRad angle of the spindle at which a tooth passes the normal, rad; with helix it
   *     grows with the height above the tip by {@code z tan(helix)/R}
   * @param climb whether the cut is a climb cut
   */
  public double overcutM(double thetaRad, boolean climb) {
    double relative = relativeAtM(thetaRad);
    return climb ? -relative : relative;
  }

  private static double at(double[] cos, double[] sin, double theta) {
    double sum = cos[0];
    for (int k = 1; k < cos.length; k++) {
      sum += cos[k] * Math.cos(k * theta) + sin[k] * Math.sin(k * theta);
    }
    return sum;
  }

  private static double peak(double[] cos, double[] sin, double[] sizes, int steps) {
    double strongest = 0;
    for (int k = 1; k < cos.length; k++) {
      sizes[k] = Math.abs(cos[k]) + Math.abs(sin[k]);
      strongest = Math.max(strongest, sizes[k]);
    }
    double[] sums = new double[steps];
    for (int k = 1; k < cos.length; k++) {
      if (sizes[k] > WEAK * strongest) {
        addHarmonic(cos[k], sin[k], 2 * Math.PI * k / steps, sums);
      }
    }
    double peak = 0;
    for (double sum : sums) {
      peak = Math.max(peak, Math.abs(sum));
    }
    return peak;
  }

  /** Adds a harmonic step by step, each turned from the one before. */
  private static void addHarmonic(double cos, double sin, double step, double[] sums) {
    double c = Math.cos(step);
    double s = Math.sin(step);
    double x = cos;
    double y = sin;
    for (int j = 0; j < sums.length; j++) {
      sums[j] += x;
      double next = x * c + y * s;
      y = y * c - x * s;
      x = next;
    }
  }
}
