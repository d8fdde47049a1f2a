package org.standproud.mechanics.plate;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.SingularOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;

/**
 * Orthonormal polynomials over the height of the plate, 0 at the root and 1 at the free edge.
 *
 * <p>On an elastic root they are the shifted Legendre polynomials, rigid motions included. On a
 * rigid root they are the combinations of those whose value and slope vanish at the root, taken
 * orthonormal from the null space of the two conditions, so that the root holds exactly and the
 * mass matrix stays the unit matrix. All numbers are pure numbers; derivatives are by height as a
 * fraction of the stick-out.
 */
final class HeightFunctions {

  private static final Map<Integer, HeightFunctions> ELASTIC = new ConcurrentHashMap<>();
  private static final Map<Integer, HeightFunctions> RIGID = new ConcurrentHashMap<>();

  /** Integrals over 0..1 of the products of second derivatives. */
  final double[][] curvatures;

  /** Integrals over 0..1 of the second derivative of one times the value of the other. */
  final double[][] curvatureByValue;

  /** Integrals over 0..1 of the products of first derivatives. */
  final double[][] slopes;

  /** Values at the root. */
  final double[] rootValue;

  /** Slopes at the root. */
  final double[] rootSlope;

  /** Second derivatives at the root. */
  final double[] rootCurvature;

  private final DMatrixRMaj combination;

  private HeightFunctions(DMatrixRMaj combination) {
    this.combination = combination;
    int degrees = combination.numRows;
    // d/d(eta) = 2 d/dt, the orthonormal factor is sqrt(2), and d(eta) = dt / 2.
    curvatures = combine(Legendre.CURVATURES, 16);
    curvatureByValue = combine(Legendre.CURVATURE_BY_VALUE, 4);
    slopes = combine(Legendre.SLOPES, 4);
    rootValue = combine(Legendre.values(-1, degrees), Math.sqrt(2));
    rootSlope = combine(Legendre.slopes(-1, degrees), 2 * Math.sqrt(2));
    rootCurvature = combine(Legendre.curvatures(-1, degrees), 4 * Math.sqrt(2));
  }

  /** Polynomials of degree 0 to {@code terms - 1}, free at the root. */
  static HeightFunctions elastic(int terms) {
    return ELASTIC.computeIfAbsent(terms, n -> new HeightFunctions(CommonOps_DDRM.identity(n)));
  }

  /** Polynomials up to degree {@code terms + 1} with no value and no slope at the root. */
  static HeightFunctions rigid(int terms) {
    return RIGID.computeIfAbsent(terms, HeightFunctions::rigidRoot);
  }

  private static HeightFunctions rigidRoot(int terms) {
    double[] value = Legendre.values(-1, terms + 2);
    double[] slope = Legendre.slopes(-1, terms + 2);
    DMatrixRMaj conditions = new DMatrixRMaj(new double[][] {value, slope});
    DMatrixRMaj span = new DMatrixRMaj(terms + 2, terms);
    var svd = DecompositionFactory_DDRM.svd(2, terms + 2, true, true, false);
    if (!svd.decompose(conditions)) {
      throw new IllegalStateException("the root conditions could not be separated");
    }
    SingularOps_DDRM.nullSpace(svd, span, 1e-12);
    return new HeightFunctions(span);
  }

  /** How many functions. */
  int terms() {
    return combination.numCols;
  }

  /**
   * The values of all functions at a height.
   *
   * @param eta height over stick-out, 0 at the root, 1 at the free edge
   */
  double[] values(double eta) {
    return combine(Legendre.values(2 * eta - 1, combination.numRows), Math.sqrt(2));
  }

  private double[] combine(double[] ofDegree, double factor) {
    DMatrixRMaj row = new DMatrixRMaj(1, combination.numRows);
    System.arraycopy(ofDegree, 0, row.data, 0, combination.numRows);
    DMatrixRMaj out = new DMatrixRMaj(1, terms());
    CommonOps_DDRM.mult(factor, row, combination, out);
    return out.data;
  }

  private double[][] combine(double[][] ofDegree, double factor) {
    int degrees = combination.numRows;
    DMatrixRMaj table = new DMatrixRMaj(degrees, degrees);
    for (int i = 0; i < degrees; i++) {
      System.arraycopy(ofDegree[i], 0, table.data, i * degrees, degrees);
    }
    DMatrixRMaj half = new DMatrixRMaj(terms(), degrees);
    CommonOps_DDRM.multTransA(factor, combination, table, half);
    DMatrixRMaj out = new DMatrixRMaj(terms(), terms());
    CommonOps_DDRM.mult(half, combination, out);
    double[][] rows = new double[terms()][];
    for (int i = 0; i < terms(); i++) {
      rows[i] = Arrays.copyOfRange(out.data, i * terms(), (i + 1) * terms());
    }
    return rows;
  }
}
