package org.standproud.mechanics.vibration;

import java.util.Arrays;
import org.standproud.mechanics.OutsideValidity;

/**
 * The limit of the axial depth at one spindle speed for a stock that rings across the feed alone:
 * the numbers of {@link StabilityLobes} with one flexible direction, for many draws.
 *
 * <p>{@code 1/a_lim = N Kt a_yy Re G / 2 pi}; a positive factor a_yy is limited below the natural
 * frequencies, where Re G is positive, a negative one above them. Only those sides are looked at,
 * in steps that grow with the distance from each mode. Of all frequencies at which the waves
 * between two teeth and the phase make a whole number, the one with the least depth counts.
 */
public final class ChatterDepth {

  private static final int POINTS = 24;

  /** Distance of the points from a mode, in damping ratios: from nothing to a third of it. */
  private static final double[] AWAY = new double[POINTS];

  static {
    double growth = Math.pow(200, 1.0 / (POINTS - 1));
    for (int i = 0; i < POINTS; i++) {
      AWAY[i] = 0.1 * (Math.pow(growth, i) - 1);
    }
  }

  private ChatterDepth() {}

  /**
   * The limit in m; {@link StabilityLobes#CAP_M} where nothing limits it.
   *
   * @param hz natural frequencies in Hz
   * @param stiffness modal stiffnesses at the tool point in N/m
   * @param modes how many modes there are
   * @param damping damping ratio of all
   * @param factor a_yy of {@link DirectionalFactors}
   * @param tangentialPa Kt in Pa
   * @param teeth N
   * @param revPerS spindle speed in 1/s, 1e-3 to 1e5
   * @throws OutsideValidity if the speed is out of its range
   */
  public static double atM(
      double[] hz,
      double[] stiffness,
      int modes,
      double damping,
      double factor,
      double tangentialPa,
      int teeth,
      double revPerS) {
    OutsideValidity.within("spindle speed", revPerS, 1e-3, 1e5, "1/s");
    double most = 0;
    double softest = Double.POSITIVE_INFINITY;
    for (int m = 0; m < modes; m++) {
      softest = Math.min(softest, stiffness[m]);
    }
    double[] perHz = new double[modes];
    double[] give = new double[modes];
    for (int m = 0; m < modes; m++) {
      perHz[m] = 1 / hz[m];
      give[m] = 1 / stiffness[m];
    }
    Side side = new Side(factor, teeth * revPerS);
    for (int m = 0; m < modes; m++) {
      // Ten times as stiff a mode limits at ten times the depth.
      if (stiffness[m] <= 10 * softest) {
        most = side.most(most, hz[m], damping, perHz, give);
      }
    }
    double inverseDepth = most * teeth * tangentialPa / (2 * Math.PI);
    return 1 / Math.max(1 / StabilityLobes.CAP_M, inverseDepth);
  }

  /** The side of a mode that limits, looked at point by point. */
  private static final class Side {
    private final double factor;
    private final double side;
    private final double toothHz;
    private final double[] f = new double[POINTS];
    private final double[] re = new double[POINTS];
    private final double[] im = new double[POINTS];
    private final double[] inverse = new double[POINTS];

    Side(double factor, double toothHz) {
      this.factor = factor;
      this.side = factor > 0 ? -1 : 1;
      this.toothHz = toothHz;
    }

    /** The greatest inverse depth of what is known and of what lies beside one mode. */
    double most(double known, double hz, double damping, double[] perHz, double[] give) {
      int points = respond(hz, damping, perHz, give);
      double most = known;
      // Waves at the point before, worked out only where they can matter.
      double wavesBefore = Double.NaN;
      for (int i = 1; i < points; i++) {
        if (Math.max(inverse[i], inverse[i - 1]) > most && hasWaves(i - 1)) {
          double before = Double.isNaN(wavesBefore) ? waves(i - 1) : wavesBefore;
          wavesBefore = waves(i);
          most = Math.max(most, crossing(before, wavesBefore, inverse[i - 1], inverse[i]));
        } else {
          wavesBefore = Double.NaN;
        }
      }
      return most;
    }

    /** The response at every point; how many points have a frequency. */
    private int respond(double hz, double damping, double[] perHz, double[] give) {
      int points = 0;
      while (points < POINTS && hz * (1 + side * damping * AWAY[points]) > 0) {
        f[points] = hz * (1 + side * damping * AWAY[points]);
        points++;
      }
      Arrays.fill(re, 0);
      Arrays.fill(im, 0);
      for (int k = 0; k < perHz.length; k++) {
        add(f, perHz[k], give[k], damping, re, im);
      }
      for (int i = 0; i < points; i++) {
        inverse[i] = factor * re[i];
      }
      return points;
    }

    private static void add(
        double[] f, double perHz, double give, double damping, double[] re, double[] im) {
      for (int i = 0; i < POINTS; i++) {
        double r = f[i] * perHz;
        double spring = 1 - r * r;
        double damper = 2 * damping * r;
        double compliance = give / (spring * spring + damper * damper);
        re[i] += spring * compliance;
        im[i] -= damper * compliance;
      }
    }

    /** Whether a point limits, or the one before it does. */
    private boolean hasWaves(int i) {
      return inverse[i] > 0 || i > 0 && inverse[i - 1] > 0;
    }

    /** M = 1/L = -a G; eps = pi - 2 atan2(Im M, -Re M), as in StabilityLobes. */
    private double waves(int i) {
      double phase = Math.PI - 2 * atan2(-factor * im[i], inverse[i]);
      return f[i] / toothHz - phase / (2 * Math.PI);
    }
  }

  /**
   * The angle of a point, to 1e-5 rad: Abramowitz and Stegun 4.4.49 (from memory), many times as
   * quick as the exact one.
   */
  static double atan2(double y, double x) {
    double steep = Math.abs(y) > Math.abs(x) ? 1 : 0;
    double t = steep == 1 ? x / y : y / x;
    double t2 = t * t;
    double angle =
        t * (0.9998660 + t2 * (-0.3302995 + t2 * (0.1801410 + t2 * (-0.0851330 + t2 * 0.0208351))));
    if (steep == 1) {
      return Math.copySign(Math.PI / 2, y) - angle;
    }
    return x >= 0 ? angle : angle + Math.copySign(Math.PI, y);
  }

  private static double crossing(double k0, double k1, double s0, double s1) {
    double whole = Math.floor(Math.max(k0, k1));
    if (whole < Math.min(k0, k1) || whole < 0) {
      return 0;
    }
    return k0 == k1 || Math.abs(k1 - k0) > 1
        ? Math.max(s0, s1)
        : s0 + (whole - k0) / (k1 - k0) * (s1 - s0);
  }
}
