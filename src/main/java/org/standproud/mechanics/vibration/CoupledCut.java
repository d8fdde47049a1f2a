package org.standproud.mechanics.vibration;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.Arrays;
import org.standproud.mechanics.OutsideValidity;

/**
 * A milling cut between two members that give: cutter with holder and spindle along and across the
 * feed, and stock across the feed. One limit of the depth at one speed costs some tens of
 * microseconds.
 *
 * <p>Zeroth order (Altintas and Budak, CIRP Annals 44/1 (1995) 357-362), as in {@link
 * StabilityLobes}, with the relative response of both members: {@code G_y = G_cutter,y + G_stock}.
 * Of the root M that limits the depth each member has a share: M is homogeneous of the first degree
 * in the responses, so that {@code M = sum G dM/dG} splits it without remainder (Euler); the member
 * with the greater share of its real part is the softer one in this cut. Not valid for arcs so
 * short that the cut is a row of blows.
 */
public final class CoupledCut {

  /** Greatest depth given, m: no limit within any cutter. */
  public static final double CAP_M = StabilityLobes.CAP_M;

  private static final int POINTS_EACH_SIDE = 14;
  private static final double REACH = 0.6;

  /** A mode whose peak is smaller than this share of the greatest gets no points of its own. */
  private static final double FAINT = 0.02;

  /** Steps of flank damping and depth in turn; each is nearer from below. */
  private static final int DAMPING_STEPS = 8;

  private final ModeSet cutterAlong;
  private final ModeSet cutterAcross;
  private final ModeSet stockAcross;
  private final DirectionalFactors factors;
  private final double cross;
  private final double depthFactor;
  private final int teeth;
  private final double[] hz;
  private final double[][] re;
  private final double[][] im;

  private CoupledCut(
      ModeSet cutterAlong,
      ModeSet cutterAcross,
      ModeSet stockAcross,
      DirectionalFactors factors,
      double tangentialPa,
      int teeth) {
    this.cutterAlong = cutterAlong;
    this.cutterAcross = cutterAcross;
    this.stockAcross = stockAcross;
    this.factors = factors;
    this.cross = factors.xx() * factors.yy() - factors.xy() * factors.yx();
    this.depthFactor = teeth * tangentialPa / (2 * Math.PI);
    this.teeth = teeth;
    this.hz = grid();
    this.re = new double[2][hz.length];
    this.im = new double[2][hz.length];
    double[] roots = new double[4];
    for (int i = 0; i < hz.length; i++) {
      roots(hz[i], roots);
      boolean swap =
          i > 0
              && away(roots, 0, i - 1, 0) + away(roots, 2, i - 1, 1)
                  > away(roots, 2, i - 1, 0) + away(roots, 0, i - 1, 1);
      for (int b = 0; b < 2; b++) {
        int from = 2 * (swap ? 1 - b : b);
        re[b][i] = roots[from];
        im[b][i] = roots[from + 1];
      }
    }
  }

  private double away(double[] roots, int root, int i, int branch) {
    double dr = roots[root] - re[branch][i];
    double di = roots[root + 1] - im[branch][i];
    return dr * dr + di * di;
  }

  /**
   * A cut.
   *
   * @param cutterAlong modes of the cutter along the feed
   * @param cutterAcross modes of the cutter across the feed
   * @param stockAcross modes of the stock across the feed; of the three at least one set gives
   * @param factors directional factors of the arc
   * @param tangentialPa tangential cutting force per chip area, Pa
   * @param teeth number of teeth
   * @throws OutsideValidity if nothing gives or a value is out of range
   */
  public static CoupledCut of(
      ModeSet cutterAlong,
      ModeSet cutterAcross,
      ModeSet stockAcross,
      DirectionalFactors factors,
      double tangentialPa,
      int teeth) {
    within("modes", cutterAlong.size() + cutterAcross.size() + stockAcross.size(), 1, 200, "");
    within("tangential force coefficient", tangentialPa, 1e6, 1e11, "Pa");
    within("teeth", teeth, 1, 200, "");
    return new CoupledCut(cutterAlong, cutterAcross, stockAcross, factors, tangentialPa, teeth);
  }

  /**
   * The limit of the depth.
   *
   * @param depthM depth at which it would begin to chatter, m, at most {@link #CAP_M}
   * @param chatterHz frequency of that chatter, Hz
   * @param stockShare share of the stock in what regenerates there, about 0 to 1: above one half
   *     the stock is the softer member; it may lie outside where one member works against the other
   */
  public record Limit(double depthM, double chatterHz, double stockShare) {

    /** Whether the cutter is the softer member. */
    public boolean cutterIsSofter() {
      return stockShare < 0.5;
    }
  }

  /** The limit below which no speed chatters. */
  public Limit least() {
    int branch = 0;
    int at = 0;
    for (int b = 0; b < 2; b++) {
      for (int i = 0; i < hz.length; i++) {
        if (re[b][i] < re[branch][at]) {
          branch = b;
          at = i;
        }
      }
    }
    return limit(hz[at], re[branch][at], im[branch][at]);
  }

  /**
   * The limit at a spindle speed.
   *
   * @param revPerS spindle speed, 1/s, 0.001 to 100000
   */
  public Limit at(double revPerS) {
    within("spindle speed", revPerS, 1e-3, 1e5, "1/s");
    double most = 1 / (CAP_M * depthFactor);
    int branch = -1;
    int at = 0;
    for (int b = 0; b < 2; b++) {
      for (int i = 1; i < hz.length; i++) {
        double s0 = -re[b][i - 1];
        double s1 = -re[b][i];
        if (Math.max(s0, s1) > most) {
          double found = crossing(waves(b, i - 1, revPerS), waves(b, i, revPerS), s0, s1);
          if (found > most) {
            most = found;
            branch = b;
            at = i;
          }
        }
      }
    }
    if (branch < 0) {
      return new Limit(CAP_M, hz[0], 0.5);
    }
    double k0 = waves(branch, at - 1, revPerS);
    double k1 = waves(branch, at, revPerS);
    boolean many = Math.abs(k1 - k0) > 1 || k0 == k1;
    double part =
        many ? (re[branch][at] < re[branch][at - 1] ? 1 : 0) : (whole(k0, k1) - k0) / (k1 - k0);
    Limit refined =
        limit(
            hz[at - 1] + part * (hz[at] - hz[at - 1]),
            re[branch][at - 1] + part * (re[branch][at] - re[branch][at - 1]),
            im[branch][at - 1] + part * (im[branch][at] - im[branch][at - 1]));
    return new Limit(
        Math.min(CAP_M, 1 / (most * depthFactor)), refined.chatterHz(), refined.stockShare());
  }

  /**
   * The limit at a spindle speed with the damping of rubbing flanks, which grows with the depth.
   *
   * <p>Found from below: damping at the limit without it, the limit with that damping, and so on;
   * every step stays at or below the limit that is looked for.
   *
   * @param revPerS spindle speed, 1/s
   * @param flank the rubbing flank
   * @param tangentialPa tangential cutting force per chip area, Pa, as for the cut
   * @param entryRad where a tooth enters, rad
   * @param exitRad where it leaves, rad
   */
  public Limit at(
      double revPerS, FlankDamping flank, double tangentialPa, double entryRad, double exitRad) {
    Limit limit = at(revPerS);
    double arc = exitRad - entryRad;
    double waves = (Math.sin(2 * exitRad) - Math.sin(2 * entryRad)) / 2;
    double alongShare = teeth / (4 * Math.PI) * (arc - waves);
    double acrossShare = teeth / (4 * Math.PI) * (arc + waves);
    for (int step = 0; step < DAMPING_STEPS && limit.depthM() < CAP_M; step++) {
      double c = flank.newtonSecondsPerM2(limit.chatterHz()) * limit.depthM();
      Limit next =
          of(
                  cutterAlong.damped(c * alongShare),
                  cutterAcross.damped(c * acrossShare),
                  stockAcross.damped(c * acrossShare),
                  factors,
                  tangentialPa,
                  teeth)
              .at(revPerS);
      boolean still = next.depthM() < limit.depthM() * 1.01;
      limit = next.depthM() > limit.depthM() ? next : limit;
      if (still) {
        break;
      }
    }
    return limit;
  }

  private Limit limit(double atHz, double mRe, double mIm) {
    double inverse = -mRe * depthFactor;
    double depth = inverse > 1 / CAP_M ? 1 / inverse : CAP_M;
    return new Limit(depth, atHz, stockShare(atHz, mRe, mIm));
  }

  /** Share of the stock in the real part of a root near a value. */
  private double stockShare(double atHz, double nearRe, double nearIm) {
    double[] roots = new double[4];
    roots(atHz, roots);
    double first = square(roots[0] - nearRe, roots[1] - nearIm);
    double second = square(roots[2] - nearRe, roots[3] - nearIm);
    double mRe = roots[first <= second ? 0 : 2];
    double mIm = roots[first <= second ? 1 : 3];
    double[] g = new double[6];
    cutterAlong.respond(atHz, g, 0);
    cutterAcross.respond(atHz, g, 2);
    stockAcross.respond(atHz, g, 4);
    // M^2 + a1 M + a0 = 0, hence dM/dGy = -(ayy M + Gx cross)/(2 M + a1).
    double topRe = -(factors.yy() * mRe + cross * g[0]);
    double topIm = -(factors.yy() * mIm + cross * g[1]);
    double lowRe = 2 * mRe + factors.xx() * g[0] + factors.yy() * (g[2] + g[4]);
    double lowIm = 2 * mIm + factors.xx() * g[1] + factors.yy() * (g[3] + g[5]);
    double size = lowRe * lowRe + lowIm * lowIm;
    if (size == 0 || mRe == 0) {
      return 0.5;
    }
    double slopeRe = (topRe * lowRe + topIm * lowIm) / size;
    double slopeIm = (topIm * lowRe - topRe * lowIm) / size;
    return (slopeRe * g[4] - slopeIm * g[5]) / mRe;
  }

  /** Both roots of {@code M^2 + a1 M + a0 = 0} at a frequency. */
  private void roots(double atHz, double[] roots) {
    double[] g = new double[4];
    cutterAlong.respond(atHz, g, 0);
    cutterAcross.respond(atHz, g, 2);
    stockAcross.respond(atHz, g, 2);
    solve(factors.xx(), factors.yy(), cross, g, roots);
  }

  /**
   * Both roots of {@code M^2 + a1 M + a0 = 0} with {@code a1 = xx Gx + yy Gy} and {@code a0 = cross
   * Gx Gy}.
   *
   * @param xx factor along the feed
   * @param yy factor across it
   * @param cross determinant of the four factors
   * @param g Gx and Gy, real and imaginary part of each, m/N
   * @param roots takes both roots, real and imaginary part of each
   */
  static void solve(double xx, double yy, double cross, double[] g, double[] roots) {
    double sumRe = xx * g[0] + yy * g[2];
    double sumIm = xx * g[1] + yy * g[3];
    double squareRe = sumRe * sumRe - sumIm * sumIm - 4 * cross * (g[0] * g[2] - g[1] * g[3]);
    double squareIm = 2 * sumRe * sumIm - 4 * cross * (g[0] * g[3] + g[1] * g[2]);
    double size = Math.sqrt(squareRe * squareRe + squareIm * squareIm);
    double rootRe = Math.sqrt(Math.max(0, (size + squareRe) / 2));
    double rootIm = Math.copySign(Math.sqrt(Math.max(0, (size - squareRe) / 2)), squareIm);
    roots[0] = -(sumRe + rootRe) / 2;
    roots[1] = -(sumIm + rootIm) / 2;
    roots[2] = -(sumRe - rootRe) / 2;
    roots[3] = -(sumIm - rootIm) / 2;
  }

  private double[] grid() {
    double greatest = 0;
    for (ModeSet set : new ModeSet[] {cutterAlong, cutterAcross, stockAcross}) {
      for (int i = 0; i < set.size(); i++) {
        greatest = Math.max(greatest, set.peakMPerN(i));
      }
    }
    double[] points =
        new double
            [(2 * POINTS_EACH_SIDE + 3)
                * (cutterAlong.size() + cutterAcross.size() + stockAcross.size())];
    int count = 0;
    for (ModeSet set : new ModeSet[] {cutterAlong, cutterAcross, stockAcross}) {
      for (int i = 0; i < set.size(); i++) {
        if (set.peakMPerN(i) >= FAINT * greatest) {
          count = putAbout(set.frequencyHz(i), set.dampingRatio(i), points, count);
        }
      }
    }
    double[] grid = Arrays.copyOf(points, count);
    Arrays.sort(grid);
    return grid;
  }

  /** Frequencies dense about a mode, its bandwidth apart and growing outward. */
  private static int putAbout(double hz, double zeta, double[] points, int at) {
    double growth = Math.exp(Math.log1p(REACH / zeta) / POINTS_EACH_SIDE);
    double stretch = 1;
    int next = at;
    points[next++] = hz;
    for (int i = 0; i < POINTS_EACH_SIDE; i++) {
      stretch *= growth;
      double away = zeta * (stretch - 1);
      points[next++] = hz * (1 - away);
      points[next++] = hz * (1 + away);
    }
    points[next++] = hz * Math.sqrt(1 + 2 * zeta);
    points[next++] = hz * Math.sqrt(Math.max(1e-4, 1 - 2 * zeta));
    return next;
  }

  /** Waves between teeth less the phase: a whole number where the speed is on a lobe. */
  private double waves(int branch, int i, double revPerS) {
    double phase = Math.PI - 2 * Math.atan2(im[branch][i], -re[branch][i]);
    return hz[i] / (teeth * revPerS) - phase / (2 * Math.PI);
  }

  private static double whole(double k0, double k1) {
    return Math.floor(Math.max(k0, k1));
  }

  private static double crossing(double k0, double k1, double s0, double s1) {
    double whole = whole(k0, k1);
    if (whole < Math.min(k0, k1) || whole < 0) {
      return 0;
    }
    // Where waves pass faster than the points stand, some wave is whole near the greater one.
    return k0 == k1 || Math.abs(k1 - k0) > 1
        ? Math.max(s0, s1)
        : s0 + (whole - k0) / (k1 - k0) * (s1 - s0);
  }

  private static double square(double re, double im) {
    return re * re + im * im;
  }
}
