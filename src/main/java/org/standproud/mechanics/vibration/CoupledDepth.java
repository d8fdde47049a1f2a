package org.standproud.mechanics.vibration;

import java.util.Arrays;
import org.standproud.mechanics.OutsideValidity;

/**
 * The limit of {@link CoupledCut} at one speed, for many draws: plain arrays, a cutter that gives
 * alike along and across the feed, and frequencies that stand closer the nearer they are to a mode.
 * One per thread.
 *
 * <p>A mode whose peak is less than {@value #FAINT} of the greatest gets no frequencies of its own.
 */
public final class CoupledDepth {

  private static final double FAINT = 0.1;

  /** Points on either side of a mode. */
  private static final int EACH_SIDE = 9;

  /**
   * How far the points reach beyond the lowest and the highest mode, as a part of its frequency.
   */
  private static final double REACH = 0.6;

  private final int most;
  private int modes;
  private int firstOfStock;
  private final double[] perHz;
  private final double[] give;
  private final double[] twiceDamping;
  private final double[] peak;
  private final int[] order;
  private final double[] points;
  private final double[] cutterRe;
  private final double[] cutterIm;
  private final double[] allRe;
  private final double[] allIm;
  private double xx;
  private double yy;
  private double cross;
  private final double[] roots = new double[4];
  private final double[] before = new double[4];
  private final double[] at = new double[4];

  /** Waves between two teeth at each root, NaN until asked for. */
  private final double[] waves = new double[4];

  private final double[] wavesBefore = new double[4];

  /**
   * Room for modes.
   *
   * @param most how many modes of both members there may be
   */
  public CoupledDepth(int most) {
    this.most = most;
    this.perHz = new double[most];
    this.give = new double[most];
    this.twiceDamping = new double[most];
    this.peak = new double[most];
    this.order = new int[most];
    int room = (2 * EACH_SIDE + 1) * most;
    this.points = new double[room];
    this.cutterRe = new double[room];
    this.cutterIm = new double[room];
    this.allRe = new double[room];
    this.allIm = new double[room];
  }

  /** Forgets the modes. */
  public void clear() {
    modes = 0;
    firstOfStock = 0;
  }

  /**
   * Adds a mode of the cutter; all of them before those of the stock.
   *
   * @param hz natural frequency in Hz
   * @param dampingRatio damping over critical
   * @param stiffnessNPerM stiffness at the cut in N/m
   */
  public void cutter(double hz, double dampingRatio, double stiffnessNPerM) {
    stock(hz, dampingRatio, stiffnessNPerM);
    firstOfStock = modes;
  }

  /** Adds a mode of the stock across the feed. */
  public void stock(double hz, double dampingRatio, double stiffnessNPerM) {
    if (modes == most) {
      throw new IllegalStateException("room for " + most + " modes only");
    }
    perHz[modes] = 1 / hz;
    give[modes] = 1 / stiffnessNPerM;
    twiceDamping[modes] = 2 * dampingRatio;
    peak[modes] = give[modes] / (2 * dampingRatio);
    modes++;
  }

  /**
   * Works the limit out.
   *
   * @param factors directional factors of the arc
   * @param tangentialPa tangential cutting force per chip area, Pa
   * @param teeth number of teeth
   * @param revPerS spindle speed, 1/s, 0.001 to 100000
   */
  public Limit at(DirectionalFactors factors, double tangentialPa, int teeth, double revPerS) {
    OutsideValidity.within("spindle speed", revPerS, 1e-3, 1e5, "1/s");
    xx = factors.xx();
    yy = factors.yy();
    cross = factors.xx() * factors.yy() - factors.xy() * factors.yx();
    double depthFactor = teeth * tangentialPa / (2 * Math.PI);
    double best = 1 / (StabilityLobes.CAP_M * depthFactor);
    double bestRe = 0;
    double bestIm = 0;
    double chatterHz = 0;
    int count = grid();
    respond(count);
    boolean reached = false;
    boolean solved = false;
    for (int i = 0; i < count; i++) {
      double f = points[i];
      boolean reaches = reaches(i, best);
      if (!reaches && !reached) {
        solved = false;
        continue; // Neither end of this step limits the depth further.
      }
      reached = reaches;
      if (i > 0 && !solved) {
        solve(i - 1);
        System.arraycopy(roots, 0, before, 0, 4);
        Arrays.fill(wavesBefore, Double.NaN);
      }
      solve(i);
      solved = true;
      Arrays.fill(waves, Double.NaN);
      if (i > 0) {
        alongside();
        for (int b = 0; b < 4; b += 2) {
          double s0 = -before[b];
          double s1 = -roots[b];
          if (Math.max(s0, s1) > best) {
            double k0 = wavesBefore[b];
            if (Double.isNaN(k0)) {
              k0 = waves(points[i - 1], before[b], before[b + 1], teeth, revPerS);
            }
            double k1 = waves(f, roots[b], roots[b + 1], teeth, revPerS);
            waves[b] = k1;
            double part = crossing(k0, k1, s0, s1);
            double found = part < 0 ? 0 : s0 + part * (s1 - s0);
            if (found > best) {
              best = found;
              bestRe = -found;
              bestIm = before[b + 1] + part * (roots[b + 1] - before[b + 1]);
              chatterHz = points[i - 1] + part * (f - points[i - 1]);
            }
          }
        }
      }
      System.arraycopy(roots, 0, before, 0, 4);
      System.arraycopy(waves, 0, wavesBefore, 0, 4);
    }
    return new Limit(
        Math.min(StabilityLobes.CAP_M, 1 / (best * depthFactor)),
        chatterHz == 0 ? staticShare() : share(chatterHz, bestRe, bestIm));
  }

  /**
   * The limit of the depth.
   *
   * @param depthM depth in m, at most {@link StabilityLobes#CAP_M}
   * @param stockShare share of the stock in what regenerates there, about 0 to 1; where nothing
   *     limits the depth its share of the static give
   */
  public record Limit(double depthM, double stockShare) {

    /** Of a stock that lets go. */
    public static final Limit UNKNOWN = new Limit(Double.NaN, Double.NaN);
  }

  /** Frequencies, rising, from the midpoint to one mode that counts to the midpoint to the next. */
  private int grid() {
    double greatest = 0;
    for (int m = 0; m < modes; m++) {
      greatest = Math.max(greatest, peak[m]);
    }
    int counting = 0;
    for (int m = 0; m < modes; m++) {
      if (peak[m] >= FAINT * greatest) {
        int at = counting++;
        while (at > 0 && perHz[order[at - 1]] < perHz[m]) {
          order[at] = order[--at];
        }
        order[at] = m;
      }
    }
    int count = 0;
    for (int i = 0; i < counting; i++) {
      double centre = 1 / perHz[order[i]];
      double width = twiceDamping[order[i]] / 2 * centre;
      double below = i == 0 ? REACH * centre : (centre - 1 / perHz[order[i - 1]]) / 2;
      double above = i + 1 == counting ? REACH * centre : (1 / perHz[order[i + 1]] - centre) / 2;
      double growth = Math.exp(Math.log1p(below / width) / EACH_SIDE);
      double stretch = 1;
      for (int k = 0; k <= EACH_SIDE; k++) {
        points[count + EACH_SIDE - k] = centre - width * (stretch - 1);
        stretch *= growth;
      }
      count += EACH_SIDE + 1;
      growth = Math.exp(Math.log1p(above / width) / EACH_SIDE);
      stretch = growth;
      for (int k = 1; k <= EACH_SIDE; k++) {
        points[count++] = centre + width * (stretch - 1);
        stretch *= growth;
      }
    }
    return count;
  }

  private double staticShare() {
    double all = 0;
    double stock = 0;
    for (int m = 0; m < modes; m++) {
      all += give[m];
      stock += m < firstOfStock ? 0 : give[m];
    }
    return all == 0 ? 0.5 : stock / all;
  }

  /** The responses at the first points: of the cutter alone, and of both members across. */
  private void respond(int count) {
    Arrays.fill(allRe, 0, count, 0);
    Arrays.fill(allIm, 0, count, 0);
    for (int m = 0; m < modes; m++) {
      add(count, perHz[m], give[m], twiceDamping[m]);
      if (m + 1 == firstOfStock) {
        System.arraycopy(allRe, 0, cutterRe, 0, count);
        System.arraycopy(allIm, 0, cutterIm, 0, count);
      }
    }
    if (firstOfStock == 0) {
      Arrays.fill(cutterRe, 0, count, 0);
      Arrays.fill(cutterIm, 0, count, 0);
    }
  }

  private void add(int count, double perHz, double give, double twiceDamping) {
    for (int i = 0; i < count; i++) {
      double r = points[i] * perHz;
      double spring = 1 - r * r;
      double damper = twiceDamping * r;
      double compliance = give / (spring * spring + damper * damper);
      allRe[i] += spring * compliance;
      allIm[i] -= damper * compliance;
    }
  }

  /**
   * Whether a root at a point can have a negative real part beyond the best so far: by the triangle
   * inequality, without a square root.
   */
  private boolean reaches(int i, double best) {
    double sumRe = xx * cutterRe[i] + yy * allRe[i];
    double sumIm = xx * cutterIm[i] + yy * allIm[i];
    double productRe = cutterRe[i] * allRe[i] - cutterIm[i] * allIm[i];
    double productIm = cutterRe[i] * allIm[i] + cutterIm[i] * allRe[i];
    double size =
        Math.abs(sumRe * sumRe - sumIm * sumIm - 4 * cross * productRe)
            + Math.abs(2 * sumRe * sumIm - 4 * cross * productIm);
    double left = 2 * best - sumRe;
    return left < 0 || size > left * left;
  }

  /** Both roots at a point. */
  private void solve(int i) {
    at[0] = cutterRe[i];
    at[1] = cutterIm[i];
    at[2] = allRe[i];
    at[3] = allIm[i];
    CoupledCut.solve(xx, yy, cross, at, roots);
  }

  /** Puts each root beside the one it was before. */
  private void alongside() {
    double straight = away(0, 0) + away(2, 2);
    double crossed = away(0, 2) + away(2, 0);
    if (crossed < straight) {
      double re = roots[0];
      double im = roots[1];
      roots[0] = roots[2];
      roots[1] = roots[3];
      roots[2] = re;
      roots[3] = im;
    }
  }

  private double away(int was, int is) {
    return square(roots[is] - before[was], roots[is + 1] - before[was + 1]);
  }

  private static double waves(double f, double re, double im, int teeth, double revPerS) {
    double phase = Math.PI - 2 * atan2(im, -re);
    return f / (teeth * revPerS) - phase / (2 * Math.PI);
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

  /** Where between two points a whole number of waves lies, 0 to 1; negative if nowhere. */
  private static double crossing(double k0, double k1, double s0, double s1) {
    double whole = Math.floor(Math.max(k0, k1));
    if (whole < Math.min(k0, k1) || whole < 0) {
      return -1;
    }
    // Where waves pass faster than the points stand, some wave is whole near the greater one.
    return k0 == k1 || Math.abs(k1 - k0) > 1 ? (s1 > s0 ? 1 : 0) : (whole - k0) / (k1 - k0);
  }

  private double share(double chatterHz, double nearRe, double nearIm) {
    points[0] = chatterHz;
    respond(1);
    solve(0);
    double first = square(roots[0] - nearRe, roots[1] - nearIm);
    double second = square(roots[2] - nearRe, roots[3] - nearIm);
    double mRe = roots[first <= second ? 0 : 2];
    double mIm = roots[first <= second ? 1 : 3];
    // M^2 + a1 M + a0 = 0, hence dM/dGy = -(ayy M + Gx cross)/(2 M + a1).
    double topRe = -(yy * mRe + cross * at[0]);
    double topIm = -(yy * mIm + cross * at[1]);
    double lowRe = 2 * mRe + xx * at[0] + yy * at[2];
    double lowIm = 2 * mIm + xx * at[1] + yy * at[3];
    double size = lowRe * lowRe + lowIm * lowIm;
    if (size == 0 || mRe == 0) {
      return staticShare();
    }
    double slopeRe = (topRe * lowRe + topIm * lowIm) / size;
    double slopeIm = (topIm * lowRe - topRe * lowIm) / size;
    return (slopeRe * (at[2] - at[0]) - slopeIm * (at[3] - at[1])) / mRe;
  }

  private static double square(double re, double im) {
    return re * re + im * im;
  }
}
