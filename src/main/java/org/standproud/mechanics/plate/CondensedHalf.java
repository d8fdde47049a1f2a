package org.standproud.mechanics.plate;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.SingularOps_DDRM;
import org.ejml.dense.row.decomposition.TriangularSolver_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The even or the odd half of the plate problem of {@link RitzHalf}, condensed to what its root
 * sees: everything that depends on sizes alone is worked out once, and a root costs one small
 * solution.
 *
 * <p>The functions up the height are split into two that move the root (value 1 and slope 0 there;
 * value 0 and slope 1) and those that leave it alone. Statics of the latter is eliminated exactly;
 * dynamics keeps the lowest of their modes on a rigid root beside the motions of the root (Craig
 * and Bampton, AIAA Journal 6 (1968) 1313-1319, from memory). Units as in {@link RitzHalf}.
 */
final class CondensedHalf {

  /** Modes on a rigid root that are kept. */
  private static final int KEPT = 8;

  private final double aspect;
  private final double poisson;
  private final RitzOrder order;
  private final int parity;
  private final HeightFunctions heights;
  private final DMatrixRMaj split;
  private final double[][] along;
  final int rootSize;
  private final int innerSize;
  private final DMatrixRMaj innerFactor;
  private final DMatrixRMaj follow;
  private final DMatrixRMaj condensed;
  private final DMatrixRMaj rootMass;
  private final DMatrixRMaj crossMass;
  private final double[] innerStiffness;
  private final DMatrixRMaj innerModes;

  /**
   * Condenses.
   *
   * @param aspect length over stick-out
   * @param poisson Poisson's ratio
   * @param supportedFraction length of the jaws over length of the plate
   * @param order how many terms
   * @param parity 0 for the even half, 1 for the odd one
   */
  CondensedHalf(
      double aspect, double poisson, double supportedFraction, RitzOrder order, int parity) {
    this.aspect = aspect;
    this.poisson = poisson;
    this.order = order;
    this.parity = parity;
    this.heights = HeightFunctions.elastic(order.heightTerms());
    this.split = split(heights);
    this.along =
        supportedFraction == 1
            ? new double[0][]
            : Legendre.valuesOverMiddle(supportedFraction, parity, order.lengthTerms());
    int terms = order.lengthTerms();
    this.rootSize = 2 * terms;
    this.innerSize = terms * (order.heightTerms() - 2);
    DMatrixRMaj whole = stiffness();
    DMatrixRMaj inner =
        CommonOps_DDRM.extract(whole, rootSize, whole.numRows, rootSize, whole.numRows);
    DMatrixRMaj join = CommonOps_DDRM.extract(whole, rootSize, whole.numRows, 0, rootSize);
    DMatrixRMaj root = CommonOps_DDRM.extract(whole, 0, rootSize, 0, rootSize);
    int kept = Math.min(KEPT, innerSize);
    this.innerStiffness = new double[kept];
    this.innerModes = new DMatrixRMaj(innerSize, kept);
    lowestOf(inner, innerStiffness, innerModes);
    CholeskyDecomposition_F64<DMatrixRMaj> factors = factors(inner);
    this.innerFactor = factors.getT(null);
    this.follow = join.copy();
    for (int column = 0; column < rootSize; column++) {
      double[] f = new double[innerSize];
      for (int i = 0; i < innerSize; i++) {
        f[i] = -join.get(i, column);
      }
      solve(innerFactor, f, innerSize);
      for (int i = 0; i < innerSize; i++) {
        follow.set(i, column, f[i]);
      }
    }
    CommonOps_DDRM.multAddTransA(join, follow, root);
    this.condensed = root;
    this.rootMass = rootMass();
    this.crossMass = new DMatrixRMaj(rootSize, kept);
    CommonOps_DDRM.multTransA(follow, innerModes, crossMass);
  }

  /** Columns: the two functions that move the root, then those that do not. */
  private static DMatrixRMaj split(HeightFunctions heights) {
    int n = heights.terms();
    DMatrixRMaj conditions = new DMatrixRMaj(new double[][] {heights.rootValue, heights.rootSlope});
    DMatrixRMaj moving = new DMatrixRMaj(n, 2);
    CommonOps_DDRM.pinv(conditions, moving);
    DMatrixRMaj still = new DMatrixRMaj(n, n - 2);
    var svd = DecompositionFactory_DDRM.svd(2, n, true, true, false);
    if (!svd.decompose(conditions.copy())) {
      throw new IllegalStateException("the root conditions could not be separated");
    }
    SingularOps_DDRM.nullSpace(svd, still, 1e-12);
    DMatrixRMaj split = new DMatrixRMaj(n, n);
    CommonOps_DDRM.insert(moving, split, 0, 0);
    CommonOps_DDRM.insert(still, split, 0, 2);
    return split;
  }

  private DMatrixRMaj turned(double[][] table) {
    DMatrixRMaj half = new DMatrixRMaj(split.numCols, table.length);
    CommonOps_DDRM.multTransA(split, new DMatrixRMaj(table), half);
    DMatrixRMaj out = new DMatrixRMaj(split.numCols, split.numCols);
    CommonOps_DDRM.mult(half, split, out);
    return out;
  }

  private int place(int m, int n) {
    return n < 2 ? 2 * m + n : rootSize + m * (order.heightTerms() - 2) + n - 2;
  }

  private DMatrixRMaj stiffness() {
    int rows = order.heightTerms();
    DMatrixRMaj curvatures = turned(heights.curvatures);
    DMatrixRMaj byValue = turned(heights.curvatureByValue);
    DMatrixRMaj slopes = turned(heights.slopes);
    DMatrixRMaj values = new DMatrixRMaj(rows, rows);
    CommonOps_DDRM.multTransA(split, split, values);
    double r2 = 4 / (aspect * aspect);
    DMatrixRMaj k = new DMatrixRMaj(rows * order.lengthTerms(), rows * order.lengthTerms());
    for (int m = 0; m < order.lengthTerms(); m++) {
      int dm = 2 * m + parity;
      for (int p = 0; p < order.lengthTerms(); p++) {
        int dp = 2 * p + parity;
        for (int n = 0; n < rows; n++) {
          for (int q = 0; q < rows; q++) {
            k.set(
                place(m, n),
                place(p, q),
                r2 * r2 * Legendre.CURVATURES[dm][dp] * values.get(n, q)
                    + poisson * r2 * Legendre.CURVATURE_BY_VALUE[dm][dp] * byValue.get(q, n)
                    + poisson * r2 * Legendre.CURVATURE_BY_VALUE[dp][dm] * byValue.get(n, q)
                    + 2 * (1 - poisson) * r2 * Legendre.SLOPES[dm][dp] * slopes.get(n, q)
                    + (m == p ? curvatures.get(n, q) : 0));
          }
        }
      }
    }
    return k;
  }

  /** Mass of the motions of the root with all that follows them. */
  private DMatrixRMaj rootMass() {
    DMatrixRMaj mass = new DMatrixRMaj(rootSize, rootSize);
    CommonOps_DDRM.multTransA(follow, follow, mass);
    DMatrixRMaj values = new DMatrixRMaj(split.numCols, split.numCols);
    CommonOps_DDRM.multTransA(split, split, values);
    for (int m = 0; m < order.lengthTerms(); m++) {
      for (int n = 0; n < 2; n++) {
        for (int q = 0; q < 2; q++) {
          mass.add(2 * m + n, 2 * m + q, values.get(n, q));
        }
      }
    }
    return mass;
  }

  private static void lowestOf(DMatrixRMaj inner, double[] values, DMatrixRMaj vectors) {
    EigenDecomposition_F64<DMatrixRMaj> eigen =
        DecompositionFactory_DDRM.eig(inner.numRows, true, true);
    if (!eigen.decompose(inner.copy())) {
      throw new IllegalStateException("the modes of the plate did not converge");
    }
    Integer[] by = new Integer[inner.numRows];
    Arrays.setAll(by, i -> i);
    Arrays.sort(by, (a, b) -> Double.compare(value(eigen, a), value(eigen, b)));
    for (int j = 0; j < values.length; j++) {
      values[j] = value(eigen, by[j]);
      DMatrixRMaj vector = eigen.getEigenVector(by[j]);
      for (int i = 0; i < inner.numRows; i++) {
        vectors.set(i, j, vector.get(i));
      }
    }
  }

  private static double value(EigenDecomposition_F64<DMatrixRMaj> eigen, int index) {
    return eigen.getEigenvalue(index).getReal();
  }

  private static CholeskyDecomposition_F64<DMatrixRMaj> factors(DMatrixRMaj matrix) {
    CholeskyDecomposition_F64<DMatrixRMaj> cholesky =
        DecompositionFactory_DDRM.chol(matrix.numRows, true);
    if (!cholesky.decompose(matrix)) {
      throw new IllegalStateException("the root does not hold the plate");
    }
    return cholesky;
  }

  private static void solve(DMatrixRMaj lower, double[] f, int n) {
    TriangularSolver_DDRM.solveL(lower.data, f, n);
    TriangularSolver_DDRM.solveTranL(lower.data, f, n);
  }

  /**
   * A point of the plate as this half sees it.
   *
   * @param byRoot what each motion of the root moves there
   * @param byMode what each mode on a rigid root moves there
   * @param ownGive give there on a rigid root
   * @param alongRoot values along the root under the point
   * @param onRigid half of the solution on a rigid root: two points' dot product is the give
   *     between them there
   */
  record Seen(
      double[] byRoot, double[] byMode, double ownGive, double[] alongRoot, double[] onRigid) {}

  /**
   * A point.
   *
   * @param xi along the plate, -1 to 1
   * @param eta up the plate, 0 to 1
   */
  Seen see(double xi, double eta) {
    int rows = order.heightTerms();
    double[] legendre = Legendre.values(xi, 2 * order.lengthTerms());
    DMatrixRMaj up = new DMatrixRMaj(1, rows);
    CommonOps_DDRM.mult(DMatrixRMaj.wrap(1, rows, heights.values(eta)), split, up);
    double[] root = new double[rootSize];
    double[] inner = new double[innerSize];
    double[] alongRoot = new double[order.lengthTerms()];
    for (int m = 0; m < order.lengthTerms(); m++) {
      alongRoot[m] = legendre[2 * m + parity];
      for (int n = 0; n < rows; n++) {
        double value = alongRoot[m] * up.get(n);
        if (n < 2) {
          root[place(m, n)] = value;
        } else {
          inner[place(m, n) - rootSize] = value;
        }
      }
    }
    double[] byMode = new double[innerStiffness.length];
    for (int j = 0; j < byMode.length; j++) {
      for (int i = 0; i < innerSize; i++) {
        byMode[j] += innerModes.get(i, j) * inner[i];
      }
    }
    for (int column = 0; column < rootSize; column++) {
      for (int i = 0; i < innerSize; i++) {
        root[column] += follow.get(i, column) * inner[i];
      }
    }
    double[] half = inner.clone();
    TriangularSolver_DDRM.solveL(innerFactor.data, half, innerSize);
    double own = 0;
    for (double h : half) {
      own += h * h;
    }
    return new Seen(root, byMode, own, alongRoot, half);
  }

  /**
   * The half on a root, in pure numbers.
   *
   * @param shift root shift in units of D/a^3
   * @param coupling root coupling in units of D/a^2
   * @param turn root turn in units of D/a
   */
  OnRoot on(double shift, double coupling, double turn) {
    DMatrixRMaj stiff = condensed.copy();
    double[] springs = {shift, coupling, coupling, turn};
    for (int m = 0; m < order.lengthTerms(); m++) {
      boolean whole = along.length == 0;
      for (int p = whole ? m : 0; p < (whole ? m + 1 : order.lengthTerms()); p++) {
        double share = whole ? 1 : along[m][p];
        for (int i = 0; i < 4; i++) {
          stiff.data[(2 * m + i / 2) * rootSize + 2 * p + i % 2] += share * springs[i];
        }
      }
    }
    return new OnRoot(factors(stiff).getT(null));
  }

  /** The half on one root. */
  final class OnRoot {
    private final DMatrixRMaj lower;

    private OnRoot(DMatrixRMaj lower) {
      this.lower = lower;
    }

    /** Motions of the root under a unit load. */
    double[] rootUnder(Seen load) {
      double[] f = load.byRoot().clone();
      solve(lower, f, rootSize);
      return f;
    }

    /** Give at a point for a unit load there. */
    double give(Seen load) {
      double[] f = load.byRoot().clone();
      TriangularSolver_DDRM.solveL(lower.data, f, rootSize);
      double sum = load.ownGive();
      for (double v : f) {
        sum += v * v;
      }
      return sum;
    }

    /** Give at one point for a unit load at another. */
    double give(Seen at, Seen load) {
      double[] f = at.byRoot().clone();
      double[] g = load.byRoot().clone();
      TriangularSolver_DDRM.solveL(lower.data, f, rootSize);
      TriangularSolver_DDRM.solveL(lower.data, g, rootSize);
      return dot(at.onRigid(), load.onRigid()) + dot(f, g);
    }

    private int size() {
      return rootSize + innerStiffness.length;
    }

    private double[] massTimes(double[] x) {
      double[] y = new double[size()];
      int kept = innerStiffness.length;
      for (int i = 0; i < rootSize; i++) {
        double sum = 0;
        for (int j = 0; j < rootSize; j++) {
          sum += rootMass.data[i * rootSize + j] * x[j];
        }
        for (int j = 0; j < kept; j++) {
          double m = crossMass.data[i * kept + j];
          sum += m * x[rootSize + j];
          y[rootSize + j] += m * x[i];
        }
        y[i] = sum;
      }
      for (int j = 0; j < kept; j++) {
        y[rootSize + j] += x[rootSize + j];
      }
      return y;
    }

    /**
     * Betters trial modes by subspace iteration (Bathe, Finite Element Procedures, from memory)
     * until the wanted ones stand still.
     *
     * @param trial trial vectors, more than are wanted; not changed
     * @param wanted how many modes
     */
    Modes modes(double[][] trial, int wanted) {
      double[][] x = new double[trial.length][];
      for (int i = 0; i < x.length; i++) {
        x[i] = trial[i].clone();
      }
      double[] values = new double[x.length];
      for (int step = 0; step < 60; step++) {
        double[] before = values;
        values = better(x);
        double moved = 0;
        for (int i = 0; i < wanted; i++) {
          moved = Math.max(moved, Math.abs(values[i] / before[i] - 1));
        }
        if (step > 0 && moved < 1e-7) {
          break;
        }
      }
      return new Modes(values, x);
    }

    private double[] better(double[][] x) {
      int n = x.length;
      DMatrixRMaj stiff = new DMatrixRMaj(n, n);
      DMatrixRMaj mass = new DMatrixRMaj(n, n);
      double[][] y = new double[n][];
      double[][] pushed = new double[n][];
      for (int i = 0; i < n; i++) {
        pushed[i] = massTimes(x[i]);
        y[i] = pushed[i].clone();
        solve(lower, y[i], rootSize);
        for (int j = 0; j < innerStiffness.length; j++) {
          y[i][rootSize + j] /= innerStiffness[j];
        }
      }
      for (int i = 0; i < n; i++) {
        double[] moved = massTimes(y[i]);
        for (int j = 0; j < n; j++) {
          stiff.data[j * n + i] = dot(y[j], pushed[i]);
          mass.data[j * n + i] = dot(y[j], moved);
        }
      }
      // mass z = (1/lambda) stiff z: the stiffness is the well-conditioned one here.
      return rotate(stiff, mass, y, x);
    }

    private double[] rotate(DMatrixRMaj stiff, DMatrixRMaj mass, double[][] from, double[][] to) {
      int n = from.length;
      DMatrixRMaj lowerOf = factors(stiff).getT(null);
      DMatrixRMaj turned = mass.copy();
      for (int column = 0; column < n; column++) {
        double[] f = column(turned, column);
        TriangularSolver_DDRM.solveL(lowerOf.data, f, n);
        setColumn(turned, column, f);
      }
      CommonOps_DDRM.transpose(turned);
      for (int column = 0; column < n; column++) {
        double[] f = column(turned, column);
        TriangularSolver_DDRM.solveL(lowerOf.data, f, n);
        setColumn(turned, column, f);
      }
      EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, true, true);
      symmetrise(turned);
      within("give of the plate by its root", CommonOps_DDRM.trace(turned), 0, 1e30, "");
      if (!eigen.decompose(turned)) {
        throw new IllegalStateException("the modes of the plate did not converge");
      }
      Integer[] by = new Integer[n];
      Arrays.setAll(by, i -> i);
      Arrays.sort(by, (a, b) -> Double.compare(value(eigen, b), value(eigen, a)));
      double[] values = new double[n];
      for (int k = 0; k < n; k++) {
        double compliance = value(eigen, by[k]);
        values[k] = 1 / compliance;
        double[] z = eigen.getEigenVector(by[k]).data.clone();
        TriangularSolver_DDRM.solveTranL(lowerOf.data, z, n);
        double[] sum = new double[from[0].length];
        for (int i = 0; i < n; i++) {
          for (int j = 0; j < sum.length; j++) {
            // z has unit stiffness; divided by the root of the compliance it has unit mass.
            sum[j] += z[i] / Math.sqrt(compliance) * from[i][j];
          }
        }
        to[k] = sum;
      }
      return values;
    }
  }

  private static void symmetrise(DMatrixRMaj a) {
    for (int i = 0; i < a.numRows; i++) {
      for (int j = 0; j < i; j++) {
        double mean = (a.get(i, j) + a.get(j, i)) / 2;
        a.set(i, j, mean);
        a.set(j, i, mean);
      }
    }
  }

  private static double[] column(DMatrixRMaj a, int column) {
    double[] f = new double[a.numRows];
    for (int i = 0; i < f.length; i++) {
      f[i] = a.get(i, column);
    }
    return f;
  }

  private static void setColumn(DMatrixRMaj a, int column, double[] f) {
    for (int i = 0; i < f.length; i++) {
      a.set(i, column, f[i]);
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /**
   * Modes of the half.
   *
   * @param values lambda squared, lowest first
   * @param shapes shapes of unit mass
   */
  record Modes(double[] values, double[][] shapes) {

    /** What a mode of unit mass moves at a point. */
    double at(int mode, Seen point) {
      double sum = 0;
      double[] shape = shapes[mode];
      int root = point.byRoot().length;
      for (int i = 0; i < root; i++) {
        sum += shape[i] * point.byRoot()[i];
      }
      for (int j = 0; j < point.byMode().length; j++) {
        sum += shape[root + j] * point.byMode()[j];
      }
      return sum;
    }
  }

  /** Vectors to begin a search for modes with: single motions of the root and modes. */
  double[][] start(int count) {
    double[][] trial = new double[count][rootSize + innerStiffness.length];
    for (int i = 0; i < count; i++) {
      trial[i][2 * i] = 1;
      trial[i][2 * i + 1] = 1;
      trial[i][rootSize + i % innerStiffness.length] = 1;
    }
    return trial;
  }
}
