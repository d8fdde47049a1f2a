package org.standproud.mechanics.plate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.NormOps_DDRM;
import org.ejml.dense.row.decomposition.TriangularSolver_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.jspecify.annotations.Nullable;

/**
 * The even or the odd half of the plate problem, in pure numbers.
 *
 * <p>With xi = 2x/b, eta = z/a, r = 2a/b and w = sum c_mn p_m(xi) q_n(eta), the strain energy in
 * units of D b/(2 a^3) has the matrix
 *
 * <pre>
 * K = I (Q2 + kw q0 q0' + kt s0 s0') + r^4 P2 I + nu r^2 (P20 Q02 + P02 Q20) + 2 (1-nu) r^2 P1 Q1
 * </pre>
 *
 * where P and Q are the tables of integrals along and up the plate, kw = k_w a^3/D, kt = k_theta
 * a/D, and the mass matrix in units of rho h a b/2 is the unit matrix. The square root of an
 * eigenvalue is lambda = omega a^2 sqrt(rho h/D).
 */
final class RitzHalf {

  private final PlateGeometry plate;
  private final RitzOrder order;
  private final HeightFunctions heights;
  private final int parity;
  private final DMatrixRMaj stiffness;
  private @Nullable Factors factors;
  private @Nullable PlatePoint lastPoint;
  private double[] lastVector = {};

  RitzHalf(PlateGeometry plate, PlateRoot root, RitzOrder order, int parity) {
    this.plate = plate;
    this.order = order;
    this.parity = parity;
    this.heights =
        root instanceof PlateRoot.Rigid
            ? HeightFunctions.rigid(order.heightTerms())
            : HeightFunctions.elastic(order.heightTerms());
    this.stiffness = plateStiffness();
    if (root instanceof PlateRoot.Elastic springs) {
      addRoot(springs);
    }
  }

  int size() {
    return order.lengthTerms() * heights.terms();
  }

  private DMatrixRMaj plateStiffness() {
    int rows = heights.terms();
    int size = size();
    double r2 = Math.pow(2 * plate.stickOutM() / plate.lengthM(), 2);
    double nuR2 = plate.poisson() * r2;
    double twist = 2 * (1 - plate.poisson()) * r2;
    DMatrixRMaj k = new DMatrixRMaj(size, size);
    for (int m = 0; m < order.lengthTerms(); m++) {
      int dm = 2 * m + parity;
      for (int p = 0; p <= m; p++) {
        int dp = 2 * p + parity;
        double bend = r2 * r2 * Legendre.CURVATURES[dm][dp];
        double cross = nuR2 * Legendre.CURVATURE_BY_VALUE[dm][dp];
        double crossBack = nuR2 * Legendre.CURVATURE_BY_VALUE[dp][dm];
        double shear = twist * Legendre.SLOPES[dm][dp];
        for (int n = 0; n < rows; n++) {
          for (int q = 0; q < rows; q++) {
            double value =
                cross * heights.curvatureByValue[q][n]
                    + crossBack * heights.curvatureByValue[n][q]
                    + shear * heights.slopes[n][q]
                    + (n == q ? bend : 0)
                    + (m == p ? heights.curvatures[n][q] : 0);
            k.data[(m * rows + n) * size + p * rows + q] = value;
            k.data[(p * rows + q) * size + m * rows + n] = value;
          }
        }
      }
    }
    return k;
  }

  private void addRoot(PlateRoot.Elastic springs) {
    int rows = heights.terms();
    int size = size();
    int terms = order.lengthTerms();
    double shift = CantileverPlate.shiftNumber(plate, springs);
    double turn = CantileverPlate.turnNumber(plate, springs);
    boolean whole = springs.supportedFraction() == 1;
    double[][] along =
        whole
            ? new double[0][]
            : Legendre.valuesOverMiddle(springs.supportedFraction(), parity, terms);
    for (int m = 0; m < terms; m++) {
      for (int p = whole ? m : 0; p < (whole ? m + 1 : terms); p++) {
        double share = whole ? 1 : along[m][p];
        for (int n = 0; n < rows; n++) {
          for (int q = 0; q < rows; q++) {
            stiffness.data[(m * rows + n) * size + p * rows + q] +=
                share
                    * (shift * heights.rootValue[n] * heights.rootValue[q]
                        + turn * heights.rootSlope[n] * heights.rootSlope[q]);
          }
        }
      }
    }
  }

  /** Values of all shape functions at a point; the last point asked for is remembered. */
  double[] vector(PlatePoint point) {
    if (!point.equals(lastPoint)) {
      lastVector = products(point.xM(), heights.values(point.zM() / plate.stickOutM()));
      lastPoint = point;
    }
    return lastVector;
  }

  /** Second derivative up the height at the root, all shape functions. */
  double[] rootCurvature(double xM) {
    return products(xM, heights.rootCurvature);
  }

  /** Slope up the height at the root, all shape functions. */
  double[] rootSlope(double xM) {
    return products(xM, heights.rootSlope);
  }

  private double[] products(double xM, double[] up) {
    double[] along = Legendre.values(2 * xM / plate.lengthM(), 2 * order.lengthTerms());
    double[] out = new double[size()];
    for (int m = 0; m < order.lengthTerms(); m++) {
      for (int n = 0; n < up.length; n++) {
        out[m * up.length + n] = along[2 * m + parity] * up[n];
      }
    }
    return out;
  }

  /** Coefficients of the shape under a unit load vector, in the units of the class. */
  double[] respond(double[] load) {
    Factors ready = factors;
    if (ready == null) {
      ready = Factors.of(stiffness);
      factors = ready;
    }
    double[] answer = load.clone();
    ready.solveLower(answer);
    TriangularSolver_DDRM.solveU(ready.upper, answer, size());
    return answer;
  }

  /**
   * Cholesky's factor L' of the stiffness, which is used up. Factor and first solution subtract
   * whole rows, which a processor does several numbers at a time; the second is the library's.
   *
   * @param upper L', row by row
   */
  private record Factors(double[] upper) {

    static Factors of(DMatrixRMaj stiffness) {
      int size = stiffness.numRows;
      double[] u = stiffness.data;
      for (int k = 0; k < size; k++) {
        int row = k * size;
        double diagonal = u[row + k];
        if (!(diagonal > 0)) {
          throw new IllegalStateException("the root does not hold the plate");
        }
        double root = Math.sqrt(diagonal);
        double inverse = 1 / root;
        u[row + k] = root;
        for (int j = k + 1; j < size; j++) {
          u[row + j] *= inverse;
        }
        for (int i = k + 1; i < size; i++) {
          subtract(u[row + i], u, row, i * size, i, size);
        }
      }
      return new Factors(u);
    }

    /** Takes a multiple of one row from another, from a column on. */
    private static void subtract(double times, double[] u, int row, int from, int first, int size) {
      for (int j = first; j < size; j++) {
        u[from + j] -= times * u[row + j];
      }
    }

    void solveLower(double[] answer) {
      int size = answer.length;
      for (int k = 0; k < size; k++) {
        double value = answer[k] / upper[k * size + k];
        answer[k] = value;
        for (int i = k + 1; i < size; i++) {
          answer[i] -= upper[k * size + i] * value;
        }
      }
    }
  }

  /**
   * The lowest modes of the half from the load-dependent vectors {@code f, Kf, KKf, ...} with K the
   * flexibility and f a load at the free corner, made orthonormal, on which the flexibility is
   * small and dense (Wilson, Yuan and Dickens, Earthquake Engineering and Structural Dynamics 10
   * (1982), from memory). The lowest modes converge first.
   *
   * @param count how many modes are wanted
   */
  List<Eigenpair> lowestModes(int count) {
    // The modes of a long plate lie close together and take more vectors to part.
    double aspect = plate.lengthM() / plate.stickOutM();
    int crowded = aspect > 8 ? (int) aspect : 0;
    int steps = Math.min(size(), Math.max(10, 2 * count + 2) + crowded);
    DMatrixRMaj basis = new DMatrixRMaj(steps, size());
    DMatrixRMaj answers = new DMatrixRMaj(steps, size());
    double[] next = respond(vector(new PlatePoint(plate.lengthM() / 2, plate.stickOutM())));
    int built = 0;
    while (built < steps) {
      if (!addOrthonormal(basis, built, next)) {
        // Nothing new in that direction: go on from one not yet tried.
        next = new double[size()];
        next[(built * 7 + 3) % size()] = 1;
        addOrthonormal(basis, built, next);
      }
      next = respond(Arrays.copyOfRange(basis.data, built * size(), (built + 1) * size()));
      System.arraycopy(next, 0, answers.data, built * size(), size());
      built++;
    }
    DMatrixRMaj small = new DMatrixRMaj(steps, steps);
    CommonOps_DDRM.multTransB(basis, answers, small);
    return pairs(small, basis, count);
  }

  private static boolean addOrthonormal(DMatrixRMaj basis, int row, double[] candidate) {
    double before = NormOps_DDRM.normF(DMatrixRMaj.wrap(1, candidate.length, candidate));
    // Twice is enough to keep the rows orthogonal to working precision.
    for (int pass = 0; pass < 2; pass++) {
      for (int i = 0; i < row; i++) {
        subtractAlong(candidate, basis.data, i * candidate.length);
      }
    }
    double norm = NormOps_DDRM.normF(DMatrixRMaj.wrap(1, candidate.length, candidate));
    if (norm <= 1e-13 * before) {
      return false;
    }
    for (int i = 0; i < candidate.length; i++) {
      basis.data[row * candidate.length + i] = candidate[i] / norm;
    }
    return true;
  }

  private static void subtractAlong(double[] candidate, double[] rows, int offset) {
    double share = 0;
    for (int i = 0; i < candidate.length; i++) {
      share += candidate[i] * rows[offset + i];
    }
    for (int i = 0; i < candidate.length; i++) {
      candidate[i] -= share * rows[offset + i];
    }
  }

  private List<Eigenpair> pairs(DMatrixRMaj small, DMatrixRMaj basis, int count) {
    var eigen = DecompositionFactory_DDRM.eig(small.numRows, true, true);
    if (!eigen.decompose(small)) {
      throw new IllegalStateException("the modes of the plate did not converge");
    }
    List<Integer> softestFirst = new ArrayList<>();
    for (int i = 0; i < small.numRows; i++) {
      softestFirst.add(i);
    }
    softestFirst.sort(Comparator.comparingDouble(i -> -eigen.getEigenvalue(i).getReal()));
    List<Eigenpair> pairs = new ArrayList<>();
    for (int i : softestFirst.subList(0, Math.min(count, small.numRows))) {
      double[] shape = new double[size()];
      CommonOps_DDRM.multTransA(basis, eigen.getEigenVector(i), DMatrixRMaj.wrap(size(), 1, shape));
      pairs.add(new Eigenpair(1 / eigen.getEigenvalue(i).getReal(), shape));
    }
    return pairs;
  }

  /**
   * One mode of the half.
   *
   * @param stiffness lambda squared
   * @param shape coefficients of unit length
   */
  record Eigenpair(double stiffness, double[] shape) {}
}
