package org.standproud.mechanics.vibration;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.Arrays;
import java.util.List;
import org.standproud.mechanics.OutsideValidity;

/**
 * Modes of one member in one direction, as plain arrays for computations over many draws.
 * Immutable.
 */
public final class ModeSet {

  /** A member that does not give. */
  public static final ModeSet RIGID = new ModeSet(new double[0], new double[0], new double[0]);

  private final double[] hz;
  private final double[] damping;
  private final double[] stiffness;

  private ModeSet(double[] hz, double[] damping, double[] stiffness) {
    this.hz = hz;
    this.damping = damping;
    this.stiffness = stiffness;
  }

  /**
   * Modes.
   *
   * @param hz natural frequencies, undamped, Hz
   * @param damping damping over critical, 0.0001 to 0.5, as many
   * @param stiffnessNPerM modal stiffness at the cutting point, N/m, as many
   * @throws OutsideValidity if a value is out of range or the arrays differ in length
   */
  public static ModeSet of(double[] hz, double[] damping, double[] stiffnessNPerM) {
    within("damping ratios", damping.length, hz.length, hz.length, "");
    within("modal stiffnesses", stiffnessNPerM.length, hz.length, hz.length, "");
    for (int i = 0; i < hz.length; i++) {
      within("natural frequency", hz[i], 1e-6, 1e12, "Hz");
      within("damping ratio", damping[i], 1e-4, 0.5, "");
      within("modal stiffness", stiffnessNPerM[i], 1e-9, 1e16, "N/m");
    }
    return new ModeSet(hz.clone(), damping.clone(), stiffnessNPerM.clone());
  }

  /** Modes of a list. */
  public static ModeSet of(List<DampedMode> modes) {
    return new ModeSet(
        modes.stream().mapToDouble(DampedMode::frequencyHz).toArray(),
        modes.stream().mapToDouble(DampedMode::dampingRatio).toArray(),
        modes.stream().mapToDouble(DampedMode::stiffnessNPerM).toArray());
  }

  /**
   * Undamped modes with one damping ratio.
   *
   * @param modes modes of a stock
   * @param damping damping over critical, 0.0001 to 0.5
   */
  public static ModeSet of(List<Mode> modes, double damping) {
    double[] all = new double[modes.size()];
    Arrays.fill(all, damping);
    return of(
        modes.stream().mapToDouble(Mode::frequencyHz).toArray(),
        all,
        modes.stream().mapToDouble(Mode::stiffnessNPerM).toArray());
  }

  /** These modes and others with them. */
  public ModeSet and(ModeSet other) {
    return new ModeSet(
        joined(hz, other.hz), joined(damping, other.damping), joined(stiffness, other.stiffness));
  }

  private static double[] joined(double[] one, double[] other) {
    double[] both = Arrays.copyOf(one, one.length + other.length);
    System.arraycopy(other, 0, both, one.length, other.length);
    return both;
  }

  /** How many modes there are. */
  public int size() {
    return hz.length;
  }

  /** Natural frequency of a mode, Hz. */
  public double frequencyHz(int mode) {
    return hz[mode];
  }

  /** Damping of a mode over critical. */
  public double dampingRatio(int mode) {
    return damping[mode];
  }

  /** Modal stiffness of a mode, N/m. */
  public double stiffnessNPerM(int mode) {
    return stiffness[mode];
  }

  /** Static give of all modes together, m/N. */
  public double staticMPerN() {
    double sum = 0;
    for (double k : stiffness) {
      sum += 1 / k;
    }
    return sum;
  }

  /**
   * The same modes with a damper to ground at the cutting point: {@code c omega_n/(2 k)} is added
   * to the damping ratio of each, at most up to one half.
   *
   * @param newtonSecondsPerM c, N.s/m, not negative
   */
  ModeSet damped(double newtonSecondsPerM) {
    double[] more = new double[hz.length];
    for (int i = 0; i < hz.length; i++) {
      double added = newtonSecondsPerM * Math.PI * hz[i] / stiffness[i];
      more[i] = Math.min(0.5, damping[i] + added);
    }
    return new ModeSet(hz, more, stiffness);
  }

  /** Greatest size of the response of a mode, about, m/N: {@code 1/(2 zeta k)}. */
  double peakMPerN(int mode) {
    return 1 / (2 * damping[mode] * stiffness[mode]);
  }

  /**
   * Adds displacement per force at a frequency, m/N: {@code 1/(k (1 - r^2 + 2 i zeta r))}.
   *
   * @param at frequency, Hz
   * @param sum real and imaginary part, added to
   * @param from where in the array the real part stands
   */
  void respond(double at, double[] sum, int from) {
    for (int i = 0; i < hz.length; i++) {
      double r = at / hz[i];
      double spring = 1 - r * r;
      double damper = 2 * damping[i] * r;
      double compliance = 1 / (stiffness[i] * (spring * spring + damper * damper));
      sum[from] += spring * compliance;
      sum[from + 1] -= damper * compliance;
    }
  }
}
