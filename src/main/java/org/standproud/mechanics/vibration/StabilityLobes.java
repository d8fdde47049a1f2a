package org.standproud.mechanics.vibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.complex.Complex;
import org.standproud.mechanics.OutsideValidity;

/**
 * The stability chart of a cut: limit of the axial depth over spindle speed.
 *
 * <p>Zeroth order (Altintas and Budak, CIRP Annals 44/1 (1995) 357-362): {@code a0 = Gxx Gyy (axx
 * ayy - axy ayx)}, {@code a1 = axx Gxx + ayy Gyy}, {@code a0 L^2 + a1 L + 1 = 0}, {@code a_lim = -2
 * pi Re L (1 + kappa^2)/(N Kt)} with {@code kappa = Im L/Re L}, speed {@code n = omega/(N (eps + 2
 * k pi))} with {@code eps = pi - 2 atan kappa}. With one flexible direction {@code L = -1/(a G)}
 * and {@code a_lim = 2 pi/(N Kt a Re G)}: a positive factor a is limited by the greatest Re G,
 * below the natural frequency, a negative one by the least, above it. One tooth always in cut
 * (Tlusty): {@code b_lim = -1/(2 Ks Re G)}.
 *
 * <p>Kept as the inverse of the depth, which passes smoothly through zero where a frequency cannot
 * chatter. Depths above {@link #CAP_M} are given as that. Not valid for an arc so short that the
 * cut is a row of blows (then extra lobes appear), nor does it count the damping of a rubbing flank
 * at low speed.
 */
public final class StabilityLobes {

  /** Greatest depth given, m: no limit within any cutter. */
  public static final double CAP_M = 1;

  private static final int POINTS_EACH_SIDE = 40;
  private static final int POINTS = 2 * POINTS_EACH_SIDE + 3;
  private static final double REACH = 0.6;

  private final double[] hz;
  private final double[][] inverseDepth;
  private final double[][] phase;
  private final int teeth;
  private final double leastDepthM;
  private final double leastHz;

  private StabilityLobes(double[] hz, List<Response> eigenvalues, double depthFactor, int teeth) {
    this.hz = hz;
    this.teeth = teeth;
    this.inverseDepth = new double[eigenvalues.size()][hz.length];
    this.phase = new double[eigenvalues.size()][hz.length];
    for (int b = 0; b < eigenvalues.size(); b++) {
      double[] re = eigenvalues.get(b).re();
      double[] im = eigenvalues.get(b).im();
      for (int i = 0; i < hz.length; i++) {
        // With M = 1/L, -Re L (1 + kappa^2) = -1/Re M and kappa = -Im M/Re M.
        inverseDepth[b][i] = -re[i] * depthFactor;
      }
      for (int i = 0; i < hz.length; i++) {
        if (mayChatterNear(b, i)) {
          phase[b][i] = Math.PI - 2 * Math.atan2(im[i], -re[i]);
        }
      }
    }
    double[] peak = peak();
    this.leastHz = peak[0];
    this.leastDepthM = 1 / Math.max(1 / CAP_M, peak[1]);
  }

  /**
   * The chart of a milling cut.
   *
   * @param along modes along the feed, may be empty
   * @param across modes across the feed, may be empty, but not both
   * @param factors directional factors of the arc
   * @param tangentialPa tangential cutting force per chip area, Pa
   * @param teeth number of teeth
   */
  public static StabilityLobes milling(
      List<DampedMode> along,
      List<DampedMode> across,
      DirectionalFactors factors,
      double tangentialPa,
      int teeth) {
    OutsideValidity.within("modes", along.size() + across.size(), 1, 100, "");
    OutsideValidity.within("tangential force coefficient", tangentialPa, 1e6, 1e11, "Pa");
    OutsideValidity.within("teeth", teeth, 1, 200, "");
    double[] grid = grid(Stream.concat(along.stream(), across.stream()).toList());
    Response x = Response.of(along, grid);
    Response y = Response.of(across, grid);
    Response a1 = x.times(factors.xx(), y, factors.yy());
    boolean both = !along.isEmpty() && !across.isEmpty();
    List<Response> eigenvalues = both ? branches(x, y, a1, factors) : List.of(a1.times(-1));
    return new StabilityLobes(grid, eigenvalues, teeth * tangentialPa / (2 * Math.PI), teeth);
  }

  /** Both roots over the frequencies, each followed from one frequency to the next. */
  private static List<Response> branches(
      Response x, Response y, Response a1, DirectionalFactors factors) {
    double cross = factors.xx() * factors.yy() - factors.xy() * factors.yx();
    int points = a1.re().length;
    Response one = new Response(new double[points], new double[points]);
    Response other = new Response(new double[points], new double[points]);
    for (int i = 0; i < points; i++) {
      Complex sum = new Complex(a1.re()[i], a1.im()[i]);
      Complex a0 = new Complex(x.re()[i], x.im()[i]).multiply(new Complex(y.re()[i], y.im()[i]));
      Complex root = sum.multiply(sum).subtract(a0.multiply(4 * cross)).sqrt();
      setNearest(one, other, i, sum.add(root).multiply(-0.5), sum.subtract(root).multiply(-0.5));
    }
    return List.of(one, other);
  }

  /**
   * The chart of a cut whose force keeps one direction, by Tlusty; with the mean number of teeth in
   * cut and an oriented response it is the average-tooth form for milling (Schmitz and Smith,
   * Machining Dynamics, from memory).
   *
   * @param modes modes in the direction of the force
   * @param specificForcePa cutting force per chip area, Pa
   * @param orientation share of a vibration that is chip thickness, times that of the force along
   *     the mode; 1 for plain turning, of either sign
   * @param teethInCut mean number of teeth in cut; 1 for turning
   * @param teeth number of teeth; 1 for turning
   */
  public static StabilityLobes turning(
      List<DampedMode> modes,
      double specificForcePa,
      double orientation,
      double teethInCut,
      int teeth) {
    OutsideValidity.within("modes", modes.size(), 1, 100, "");
    OutsideValidity.within("specific cutting force", specificForcePa, 1e6, 1e11, "Pa");
    OutsideValidity.within("orientation", orientation, -10, 10, "");
    OutsideValidity.within("teeth in cut", teethInCut, 0, teeth, "");
    double[] grid = grid(modes);
    return new StabilityLobes(
        grid,
        List.of(Response.of(modes, grid).times(orientation)),
        2 * specificForcePa * teethInCut,
        teeth);
  }

  private static void setNearest(Response one, Response other, int i, Complex m, Complex n) {
    boolean swap = i > 0 && awayFrom(one, i - 1, m) > awayFrom(one, i - 1, n);
    set(one, i, swap ? n : m);
    set(other, i, swap ? m : n);
  }

  private static double awayFrom(Response branch, int i, Complex value) {
    double re = value.getReal() - branch.re()[i];
    double im = value.getImaginary() - branch.im()[i];
    return re * re + im * im;
  }

  private static void set(Response branch, int i, Complex value) {
    branch.re()[i] = value.getReal();
    branch.im()[i] = value.getImaginary();
  }

  private static double[] grid(List<DampedMode> modes) {
    double[] grid = new double[modes.size() * POINTS];
    for (int m = 0; m < modes.size(); m++) {
      putAbout(modes.get(m), grid, m * POINTS);
    }
    Arrays.sort(grid);
    return grid;
  }

  /**
   * Frequencies dense about a mode, in steps that grow from its bandwidth outward, and the two
   * where the real part of a single mode is least and greatest: {@code f_n sqrt(1 +- 2 zeta)}.
   * Between them the limit of several modes is missed by less than a thousandth.
   */
  private static void putAbout(DampedMode mode, double[] points, int at) {
    double zeta = mode.dampingRatio();
    double growth = Math.exp(Math.log1p(REACH / zeta) / POINTS_EACH_SIDE);
    int middle = at + POINTS_EACH_SIDE;
    double stretch = 1;
    for (int i = 0; i <= POINTS_EACH_SIDE; i++) {
      double away = zeta * (stretch - 1);
      points[middle - i] = mode.frequencyHz() * (1 - away);
      points[middle + i] = mode.frequencyHz() * (1 + away);
      stretch *= growth;
    }
    points[at + POINTS - 2] = mode.frequencyHz() * Math.sqrt(1 + 2 * zeta);
    // Damping of one half leaves no greatest real part above zero frequency.
    points[at + POINTS - 1] = mode.frequencyHz() * Math.sqrt(Math.max(1e-4, 1 - 2 * zeta));
  }

  private boolean mayChatterNear(int branch, int i) {
    double[] s = inverseDepth[branch];
    return s[i] > 0 || (i > 0 && s[i - 1] > 0) || (i + 1 < s.length && s[i + 1] > 0);
  }

  /** Frequency and value of the greatest inverse depth. */
  private double[] peak() {
    int atBranch = 0;
    int at = 0;
    for (int b = 0; b < inverseDepth.length; b++) {
      for (int i = 0; i < hz.length; i++) {
        if (inverseDepth[b][i] > inverseDepth[atBranch][at]) {
          atBranch = b;
          at = i;
        }
      }
    }
    return new double[] {hz[at], inverseDepth[atBranch][at]};
  }

  /** The depth below which no speed chatters, m. */
  public double leastDepthM() {
    return leastDepthM;
  }

  /** The frequency at which it would chatter just above that depth, Hz. */
  public double chatterHz() {
    return leastHz;
  }

  /**
   * The limit of the depth at a spindle speed, m, at most {@link #CAP_M}.
   *
   * @param revPerS spindle speed, 1/s, greater than zero
   */
  public double depthAtM(double revPerS) {
    OutsideValidity.within("spindle speed", revPerS, 1e-3, 1e5, "1/s");
    double most = 1 / CAP_M;
    for (int b = 0; b < inverseDepth.length; b++) {
      for (int i = 1; i < hz.length; i++) {
        double s0 = inverseDepth[b][i - 1];
        double s1 = inverseDepth[b][i];
        if (Math.max(s0, s1) > most) {
          most = Math.max(most, crossing(waves(b, i - 1, revPerS), waves(b, i, revPerS), s0, s1));
        }
      }
    }
    return Math.max(leastDepthM, 1 / most);
  }

  /** Waves between teeth less the phase: a whole number where the speed is on a lobe. */
  private double waves(int branch, int i, double revPerS) {
    return hz[i] / (teeth * revPerS) - phase[branch][i] / (2 * Math.PI);
  }

  private static double crossing(double k0, double k1, double s0, double s1) {
    // The speed is on a lobe where the waves between teeth pass a whole number.
    double whole = Math.floor(Math.max(k0, k1));
    boolean crossed = whole >= Math.min(k0, k1) && whole >= 0;
    if (!crossed) {
      return 0;
    }
    if (k0 == k1 || Math.abs(k1 - k0) > 1) {
      return Math.max(s0, s1);
    }
    return s0 + (whole - k0) / (k1 - k0) * (s1 - s0);
  }

  /**
   * Speeds in a range at which the limit is highest near the top of a lobe, best first.
   *
   * @param leastRevPerS least speed, 1/s
   * @param mostRevPerS greatest speed, 1/s
   * @param count how many at most
   */
  public List<Lobe.Point> bestSpeeds(double leastRevPerS, double mostRevPerS, int count) {
    List<Lobe.Point> best = new ArrayList<>();
    for (int j = 1; j <= 12; j++) {
      Lobe.Point top = new Lobe.Point(0, 0, 0);
      for (double factor = 0.9; factor < 1.105; factor += 0.02) {
        double speed = factor * leastHz / (teeth * j);
        if (speed >= leastRevPerS && speed <= mostRevPerS && speed >= 1e-3) {
          double depth = depthAtM(speed);
          if (depth > top.depthM()) {
            top = new Lobe.Point(speed, depth, leastHz);
          }
        }
      }
      if (top.depthM() > 1.05 * leastDepthM) {
        best.add(top);
      }
    }
    best.sort(Comparator.comparingDouble(Lobe.Point::depthM).reversed());
    List<Lobe.Point> apart = new ArrayList<>();
    for (Lobe.Point point : best) {
      boolean near =
          apart.stream().anyMatch(p -> Math.abs(p.revPerS() / point.revPerS() - 1) < 0.03);
      if (!near && apart.size() < count) {
        apart.add(point);
      }
    }
    return List.copyOf(apart);
  }

  /**
   * The curves for a plot: the lobes with a part in a range of speeds, the fastest first.
   *
   * @param leastRevPerS least speed, 1/s
   * @param mostRevPerS greatest speed, 1/s
   * @param numbers how many lobe numbers at most
   */
  public List<Lobe> lobes(double leastRevPerS, double mostRevPerS, int numbers) {
    OutsideValidity.within("spindle speed", leastRevPerS, 1e-3, 1e5, "1/s");
    int first = (int) Math.max(0, Math.floor(hz[0] / (teeth * mostRevPerS)) - 1);
    int last = (int) Math.ceil(hz[hz.length - 1] / (teeth * leastRevPerS));
    List<Lobe> lobes = new ArrayList<>();
    int found = 0;
    for (int k = first; k <= last && found < numbers; k++) {
      boolean any = false;
      for (int b = 0; b < inverseDepth.length; b++) {
        List<Lobe.Point> points = lobe(b, k, leastRevPerS, mostRevPerS);
        if (!points.isEmpty()) {
          lobes.add(new Lobe(k, points));
          any = true;
        }
      }
      found += any ? 1 : 0;
    }
    return List.copyOf(lobes);
  }

  private List<Lobe.Point> lobe(int branch, int number, double leastRevPerS, double mostRevPerS) {
    List<Lobe.Point> points = new ArrayList<>();
    for (int i = 0; i < hz.length; i++) {
      double speed = 2 * Math.PI * hz[i] / (teeth * (phase[branch][i] + 2 * Math.PI * number));
      if (inverseDepth[branch][i] > 1 / CAP_M && speed >= leastRevPerS && speed <= mostRevPerS) {
        points.add(new Lobe.Point(speed, 1 / inverseDepth[branch][i], hz[i]));
      }
    }
    return points;
  }
}
