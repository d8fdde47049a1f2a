package org.standproud.mechanics.tooltip;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.decomposition.TriangularSolver_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.vibration.ModeSet;

/**
 * Modes of the cutting end: a stepped beam of Timoshenko from tip to spindle nose, coupled to the
 * receptance of the nose.
 *
 * <p>Receptance coupling (Schmitz and Donaldson, CIRP Annals 49/1 (2000) 303; Schmitz and Smith,
 * Machining Dynamics; from memory) in modal form: the beam is reduced once to its two rigid motions
 * at the nose and its lowest {@value #KEPT} modes on a rigid nose (Craig and Bampton, AIAA Journal
 * 6 (1968) 1313, from memory); a {@link SpindleNose} adds swing and taper, six unknowns in all.
 * Elements: exact stiffness of Timoshenko with consistent mass and rotary inertia (Przemieniecki,
 * Theory of Matrix Structural Analysis, 1968; Friedman and Kosmatka, Computers and Structures 47
 * (1993) 473; from memory). Damping of a mode: that of spindle and taper, and of the beam, by their
 * shares of its strain energy (modal strain energy; Johnson and Kienholz, AIAA Journal 20 (1982)
 * 1284, from memory). Spinning is left out (no gyroscopic terms), which holds for the speeds of a
 * knee mill.
 */
public final class ToolOnSpindle {

  /** Modes of the beam that are kept. */
  private static final int KEPT = 4;

  private static final int SIZE = KEPT + 2;

  /** Damping of solid tools and holders over critical: common practice, no source. */
  private static final double BEAM_DAMPING = 0.003;

  /** Elements of a part: one for so many diameters, at least two. */
  private static final double DIAMETERS = 1.5;

  private static final int MOST_ELEMENTS = 5;

  private final double overhangM;
  private final double[] tip = new double[SIZE];
  private final double[][] mass = new double[SIZE][SIZE];
  private final double[][] edgeStiffness = new double[KEPT][KEPT];
  private final double[][] otherStiffness = new double[KEPT][KEPT];
  private final double edgeGive;
  private final double otherGive;

  /**
   * Reduces a tool.
   *
   * @param fromTip its parts from the cutting end to the nose, at least one with a length
   * @throws OutsideValidity if they have no length between them
   */
  public ToolOnSpindle(List<RoundPart> fromTip) {
    this.overhangM = fromTip.stream().mapToDouble(RoundPart::lengthM).sum();
    within("length of a tool", overhangM, 1e-3, 1, "m");
    Beam beam = Beam.of(fromTip);
    int n = beam.mass.numRows;
    DMatrixRMaj edge = inner(beam.edge);
    DMatrixRMaj other = inner(beam.other);
    DMatrixRMaj innerMass = inner(beam.mass);
    DMatrixRMaj stiff = edge.copy();
    CommonOps_DDRM.addEquals(stiff, other);
    double[][] modes = lowest(stiff, innerMass, KEPT).shapes();
    double[][] basis = new double[SIZE][n];
    for (int node = 0; node < n / 2; node++) {
      basis[0][2 * node] = 1;
      basis[1][2 * node] = beam.x[node];
      basis[1][2 * node + 1] = 1;
    }
    for (int k = 0; k < modes.length; k++) {
      System.arraycopy(modes[k], 0, basis[2 + k], 2, n - 2);
    }
    for (int i = 0; i < SIZE; i++) {
      tip[i] = basis[i][n - 2];
      for (int j = 0; j < SIZE; j++) {
        mass[i][j] = product(basis[i], beam.mass, basis[j]);
        if (i > 1 && j > 1) {
          edgeStiffness[i - 2][j - 2] = product(basis[i], beam.edge, basis[j]);
          otherStiffness[i - 2][j - 2] = product(basis[i], beam.other, basis[j]);
        }
      }
    }
    double[] give = tipGive(stiff, edge);
    this.edgeGive = give[1];
    this.otherGive = give[0] - give[1];
  }

  private static DMatrixRMaj inner(DMatrixRMaj whole) {
    return CommonOps_DDRM.extract(whole, 2, whole.numRows, 2, whole.numRows);
  }

  /** Give of the tip on a rigid nose, and the part of it that the edge material gives. */
  private static double[] tipGive(DMatrixRMaj stiff, DMatrixRMaj edge) {
    int n = stiff.numRows;
    CholeskyDecomposition_F64<DMatrixRMaj> factors = factors(stiff);
    double[] x = new double[n];
    x[n - 2] = 1;
    DMatrixRMaj lower = factors.getT(null);
    TriangularSolver_DDRM.solveL(lower.data, x, n);
    TriangularSolver_DDRM.solveTranL(lower.data, x, n);
    return new double[] {x[n - 2], product(x, edge, x)};
  }

  private static CholeskyDecomposition_F64<DMatrixRMaj> factors(DMatrixRMaj matrix) {
    CholeskyDecomposition_F64<DMatrixRMaj> cholesky =
        DecompositionFactory_DDRM.chol(matrix.numRows, true);
    if (!cholesky.decompose(matrix.copy())) {
      throw new IllegalStateException("the tool is not held");
    }
    return cholesky;
  }

  private static double product(double[] left, DMatrixRMaj matrix, double[] right) {
    int n = right.length;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double row = 0;
      for (int j = 0; j < n; j++) {
        row += matrix.data[i * n + j] * right[j];
      }
      sum += left[i] * row;
    }
    return sum;
  }

  /**
   * Static give of the tip, m/N: beam, swing and taper.
   *
   * @param edgeModulus modulus of the edge material over the one given, 0.5 to 2
   * @param nose the spindle
   */
  public double giveMPerN(double edgeModulus, SpindleNose nose) {
    within("modulus over the one given", edgeModulus, 0.5, 2, "");
    return edgeGive / edgeModulus + otherGive + nose.giveMPerN(overhangM);
  }

  /**
   * The lowest modes at the tip in one direction.
   *
   * @param edgeModulus modulus of the edge material over the one given, 0.5 to 2
   * @param nose the spindle in that direction
   * @param count how many, 1 to 6
   */
  public ModeSet modes(double edgeModulus, SpindleNose nose, int count) {
    within("modulus over the one given", edgeModulus, 0.5, 2, "");
    within("modes", count, 1, SIZE, "");
    double p = nose.pivotM();
    double swing = nose.stiffnessNPerM() * p * p;
    double omega = 2 * Math.PI * nose.ownHz();
    DMatrixRMaj k = new DMatrixRMaj(SIZE, SIZE);
    DMatrixRMaj m = new DMatrixRMaj(SIZE, SIZE);
    double[][] joined = new double[SIZE][SIZE];
    double[] moving = new double[SIZE];
    join(p, joined, moving);
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j < SIZE; j++) {
        m.data[i * SIZE + j] = joined[i][j];
        if (i > 1 && j > 1) {
          k.data[i * SIZE + j] =
              edgeModulus * edgeStiffness[i - 2][j - 2] + otherStiffness[i - 2][j - 2];
        }
      }
    }
    m.data[0] += swing / (omega * omega);
    k.data[0] = swing;
    k.data[SIZE + 1] = nose.taperNmPerRad();
    Modes found = lowest(k, m, count);
    double[] hz = new double[count];
    double[] damping = new double[count];
    double[] stiffness = new double[count];
    for (int mode = 0; mode < count; mode++) {
      double[] shape = found.shapes()[mode];
      double square = found.values()[mode];
      double energy = shape[0] * shape[0] * swing + shape[1] * shape[1] * nose.taperNmPerRad();
      double share = Math.min(1, energy / square);
      hz[mode] = Math.sqrt(square) / (2 * Math.PI);
      damping[mode] = share * nose.dampingRatio() + (1 - share) * BEAM_DAMPING;
      double moved = 0;
      for (int i = 0; i < SIZE; i++) {
        moved += moving[i] * shape[i];
      }
      stiffness[mode] = Math.min(1e15, square / (moved * moved));
    }
    return ModeSet.of(hz, damping, stiffness);
  }

  /** Stiffness of the beam between two of its modes on a rigid nose. */
  double beamStiffness(double edgeModulus, int i, int j) {
    return edgeModulus * edgeStiffness[i][j] + otherStiffness[i][j];
  }

  /**
   * Mass of swing, taper and the lowest modes of the beam, and what each moves the tip.
   *
   * @param p distance of the pivot behind the nose, m
   * @param m filled
   * @param moved filled
   */
  void join(double p, double[][] m, double[] moved) {
    double both = mass[0][1];
    double turn = mass[1][1];
    m[0][0] = p * p * mass[0][0] + 2 * p * both + turn;
    m[0][1] = p * both + turn;
    m[1][0] = m[0][1];
    m[1][1] = turn;
    moved[0] = p + overhangM;
    moved[1] = overhangM;
    for (int i = 2; i < m.length; i++) {
      m[0][i] = p * mass[0][i] + mass[1][i];
      m[i][0] = m[0][i];
      m[1][i] = mass[1][i];
      m[i][1] = m[1][i];
      moved[i] = tip[i];
      for (int j = 2; j < m.length; j++) {
        m[i][j] = mass[i][j];
      }
    }
  }

  /** Squares of angular frequencies, lowest first, and shapes of unit mass. */
  private record Modes(double[] values, double[][] shapes) {}

  private static Modes lowest(DMatrixRMaj stiffness, DMatrixRMaj mass, int count) {
    int n = mass.numRows;
    DMatrixRMaj lower = factors(mass).getT(null);
    DMatrixRMaj standard = stiffness.copy();
    for (int pass = 0; pass < 2; pass++) {
      double[] f = new double[n];
      for (int column = 0; column < n; column++) {
        for (int i = 0; i < n; i++) {
          f[i] = standard.data[i * n + column];
        }
        TriangularSolver_DDRM.solveL(lower.data, f, n);
        for (int i = 0; i < n; i++) {
          standard.data[i * n + column] = f[i];
        }
      }
      CommonOps_DDRM.transpose(standard);
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        double mean = (standard.data[i * n + j] + standard.data[j * n + i]) / 2;
        standard.data[i * n + j] = mean;
        standard.data[j * n + i] = mean;
      }
    }
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, true, true);
    if (!eigen.decompose(standard)) {
      throw new IllegalStateException("the modes of the tool did not converge");
    }
    Integer[] by = new Integer[n];
    Arrays.setAll(by, i -> i);
    Arrays.sort(by, (a, b) -> Double.compare(value(eigen, a), value(eigen, b)));
    double[] values = new double[count];
    double[][] shapes = new double[count][];
    for (int k = 0; k < count; k++) {
      values[k] = value(eigen, by[k]);
      shapes[k] = eigen.getEigenVector(by[k]).data.clone();
      TriangularSolver_DDRM.solveTranL(lower.data, shapes[k], n);
    }
    return new Modes(values, shapes);
  }

  private static double value(EigenDecomposition_F64<DMatrixRMaj> eigen, int index) {
    return eigen.getEigenvalue(index).getReal();
  }

  /**
   * The beam by elements, from the nose (first node) to the tip (last).
   *
   * @param x distance of each node from the nose, m
   * @param edge stiffness of the parts of the edge material
   * @param other stiffness of the other parts
   * @param mass mass of all
   */
  private record Beam(double[] x, DMatrixRMaj edge, DMatrixRMaj other, DMatrixRMaj mass) {

    static Beam of(List<RoundPart> fromTip) {
      int[] elements = new int[fromTip.size()];
      int all = 0;
      for (int i = 0; i < elements.length; i++) {
        RoundPart part = fromTip.get(i);
        elements[i] =
            part.lengthM() == 0
                ? 0
                : (int)
                    Math.max(
                        2,
                        Math.min(
                            MOST_ELEMENTS,
                            Math.ceil(part.lengthM() / (DIAMETERS * part.diameterM()))));
        all += elements[i];
      }
      int size = 2 * (all + 1);
      Beam beam =
          new Beam(
              new double[all + 1],
              new DMatrixRMaj(size, size),
              new DMatrixRMaj(size, size),
              new DMatrixRMaj(size, size));
      int node = 0;
      for (int i = elements.length - 1; i >= 0; i--) {
        RoundPart part = fromTip.get(i);
        double l = part.lengthM() / Math.max(1, elements[i]);
        for (int e = 0; e < elements[i]; e++) {
          beam.add(part, node, l);
          beam.x[node + 1] = beam.x[node] + l;
          node++;
        }
      }
      return beam;
    }

    private void add(RoundPart part, int node, double l) {
      double shear = 12 * part.bendingNm2() / (part.shearN() * l * l);
      double bend = part.bendingNm2() / (l * l * l * (1 + shear));
      DMatrixRMaj k = part.edgeMaterial() ? edge : other;
      put(k, node, l, bend, new double[] {12, 6, -12, 6, 4 + shear, -6, 2 - shear});
      double square = (1 + shear) * (1 + shear);
      double moving = part.massKgPerM() * l / square;
      double s2 = shear * shear;
      put(
          mass,
          node,
          l,
          moving,
          new double[] {
            13.0 / 35 + 7 * shear / 10 + s2 / 3,
            11.0 / 210 + 11 * shear / 120 + s2 / 24,
            9.0 / 70 + 3 * shear / 10 + s2 / 6,
            -(13.0 / 420 + 3 * shear / 40 + s2 / 24),
            1.0 / 105 + shear / 60 + s2 / 120,
            13.0 / 420 + 3 * shear / 40 + s2 / 24,
            -(1.0 / 140 + shear / 60 + s2 / 120)
          });
      double turning = part.inertiaKgM() / (l * square);
      double cross = 0.1 - shear / 2;
      put(
          mass,
          node,
          l,
          turning,
          new double[] {
            1.2,
            cross,
            -1.2,
            cross,
            2.0 / 15 + shear / 6 + s2 / 3,
            -cross,
            -1.0 / 30 - shear / 6 + s2 / 6
          });
    }

    /** Adds a symmetric element from its entries 11, 12, 13, 14, 22, 23, 24 without lengths. */
    private static void put(DMatrixRMaj to, int node, double l, double unit, double[] v) {
      double[][] e = {
        {v[0], v[1], v[2], v[3]},
        {v[1], v[4], v[5], v[6]},
        {v[2], v[5], v[0], -v[1]},
        {v[3], v[6], -v[1], v[4]}
      };
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          double lengths = (i % 2 == 1 ? l : 1) * (j % 2 == 1 ? l : 1);
          to.add(2 * node + i, 2 * node + j, unit * lengths * e[i][j]);
        }
      }
    }
  }
}
