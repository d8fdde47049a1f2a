package org.standproud.mechanics.tooltip;

/**
 * The lowest modes of a {@link ToolOnSpindle} for many draws of its spindle: spindle swing, taper
 * and the two lowest modes of the beam, four unknowns. One per thread; nothing is made anew for a
 * draw.
 *
 * <p>With the stiffness factored, {@code K = R R'}, the eigenvalues of {@code R^-1 M R^-T} are one
 * over the squares of the angular frequencies, and shapes of unit strain energy give the modal
 * stiffness at the tip as one over the square of what they move there (any textbook of vibration).
 * Jacobi's rotations (Golub and Van Loan, Matrix Computations, 8.5, from memory).
 */
public final class TipModes {

  /** Modes that are given. */
  public static final int MODES = 3;

  private static final int SIZE = 4;
  private static final int SWEEPS = 12;

  private final ToolOnSpindle tool;
  private final double[][] a = new double[SIZE][SIZE];
  private final double[][] v = new double[SIZE][SIZE];
  private final double[] tip = new double[SIZE];
  private final double[] hz = new double[MODES];
  private final double[] stiffness = new double[MODES];

  /** The modes of a tool, to be worked out by {@link #solve}. */
  public TipModes(ToolOnSpindle tool) {
    this.tool = tool;
  }

  /**
   * Works the modes out for one spindle.
   *
   * @param edgeModulus modulus of the edge material over the one given, 0.5 to 2
   * @param nose the spindle
   */
  public void solve(double edgeModulus, SpindleNose nose) {
    double p = nose.pivotM();
    double swing = nose.stiffnessNPerM() * p * p;
    double omega = 2 * Math.PI * nose.ownHz();
    tool.join(p, a, tip);
    a[0][0] += swing / (omega * omega);
    double k22 = tool.beamStiffness(edgeModulus, 0, 0);
    double k23 = tool.beamStiffness(edgeModulus, 0, 1);
    double k33 = tool.beamStiffness(edgeModulus, 1, 1);
    double r0 = Math.sqrt(swing);
    double r1 = Math.sqrt(nose.taperNmPerRad());
    double r2 = Math.sqrt(k22);
    double r32 = k23 / r2;
    double r3 = Math.sqrt(k33 - r32 * r32);
    for (int i = 0; i < SIZE; i++) {
      a[i][0] /= r0;
      a[i][1] /= r1;
      a[i][2] /= r2;
      a[i][3] = (a[i][3] - r32 * a[i][2]) / r3;
    }
    for (int j = 0; j < SIZE; j++) {
      a[0][j] /= r0;
      a[1][j] /= r1;
      a[2][j] /= r2;
      a[3][j] = (a[3][j] - r32 * a[2][j]) / r3;
    }
    tip[0] /= r0;
    tip[1] /= r1;
    tip[2] /= r2;
    tip[3] = (tip[3] - r32 * tip[2]) / r3;
    rotate();
    boolean[] taken = new boolean[SIZE];
    for (int mode = 0; mode < MODES; mode++) {
      int slowest = -1;
      for (int i = 0; i < SIZE; i++) {
        if (!taken[i] && (slowest < 0 || a[i][i] > a[slowest][slowest])) {
          slowest = i;
        }
      }
      taken[slowest] = true;
      double moved = 0;
      for (int i = 0; i < SIZE; i++) {
        moved += tip[i] * v[i][slowest];
      }
      hz[mode] = 1 / (2 * Math.PI * Math.sqrt(a[slowest][slowest]));
      stiffness[mode] = Math.min(1e15, 1 / (moved * moved));
    }
  }

  private void rotate() {
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j < SIZE; j++) {
        v[i][j] = i == j ? 1 : 0;
      }
    }
    double trace = a[0][0] + a[1][1] + a[2][2] + a[3][3];
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      double off = 0;
      for (int i = 0; i < SIZE; i++) {
        for (int j = 0; j < i; j++) {
          off = Math.max(off, a[i][j] * a[i][j] / (a[i][i] * a[j][j]));
          if (Math.abs(a[i][j]) > 1e-16 * trace) {
            turn(j, i);
          }
        }
      }
      if (off < 1e-12) {
        return;
      }
    }
  }

  /** Rotates two directions until their entry is zero. */
  private void turn(int p, int q) {
    double theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
    double t = Math.copySign(1, theta) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
    double c = 1 / Math.sqrt(t * t + 1);
    double s = t * c;
    for (int k = 0; k < SIZE; k++) {
      double kp = a[k][p];
      double kq = a[k][q];
      a[k][p] = c * kp - s * kq;
      a[k][q] = s * kp + c * kq;
    }
    for (int k = 0; k < SIZE; k++) {
      double pk = a[p][k];
      double qk = a[q][k];
      a[p][k] = c * pk - s * qk;
      a[q][k] = s * pk + c * qk;
      double vp = v[k][p];
      double vq = v[k][q];
      v[k][p] = c * vp - s * vq;
      v[k][q] = s * vp + c * vq;
    }
  }

  /** Natural frequency of a mode, slowest first, in Hz. */
  public double hz(int mode) {
    return hz[mode];
  }

  /** Stiffness of a mode at the tip in N/m. */
  public double stiffnessNPerM(int mode) {
    return stiffness[mode];
  }
}
