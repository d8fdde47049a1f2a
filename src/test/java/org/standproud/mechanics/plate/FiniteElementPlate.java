package org.standproud.mechanics.plate;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * The same plate by finite elements, for comparison: the rectangular element with twelve degrees of
 * freedom (deflection and two slopes at each corner; Melosh, Zienkiewicz and Cheung, Adini and
 * Clough; from memory). It does not conform, so its answers are no bounds: they come near from the
 * soft side. The mass is gathered at the corners of the elements.
 */
final class FiniteElementPlate {

  private static final double[] GAUSS = {
    -0.861136311594053, -0.339981043584856, 0.339981043584856, 0.861136311594053
  };
  private static final double[] WEIGHT = {
    0.347854845137454, 0.652145154862546, 0.652145154862546, 0.347854845137454
  };
  private static final int[][] POWERS = {
    {0, 0}, {1, 0}, {0, 1}, {2, 0}, {1, 1}, {0, 2}, {3, 0}, {2, 1}, {1, 2}, {0, 3}, {3, 1}, {1, 3}
  };

  private final PlateGeometry plate;
  private final int nx;
  private final int nz;
  private final DMatrixRMaj stiffness;
  private final double[] massOfNode;
  private final LinearSolverDense<DMatrixRMaj> solver;

  FiniteElementPlate(PlateGeometry plate, PlateRoot.Elastic root, int nx, int nz) {
    this(plate, root, nx, nz, 0, 0);
  }

  /**
   * A plate whose lowest part lies between elastic layers.
   *
   * @param footRows rows of elements between the layers
   * @param layersPaPerM stiffness of both layers together
   */
  FiniteElementPlate(
      PlateGeometry plate,
      PlateRoot.Elastic root,
      int nx,
      int nz,
      int footRows,
      double layersPaPerM) {
    this.plate = plate;
    this.nx = nx;
    this.nz = nz;
    int size = 3 * (nx + 1) * (nz + 1);
    stiffness = new DMatrixRMaj(size, size);
    massOfNode = new double[(nx + 1) * (nz + 1)];
    double dx = plate.lengthM() / nx;
    double dz = plate.stickOutM() / nz;
    DMatrixRMaj element = element(dx, dz);
    for (int i = 0; i < nx; i++) {
      for (int j = 0; j < nz; j++) {
        int[] nodes = {node(i, j), node(i + 1, j), node(i + 1, j + 1), node(i, j + 1)};
        add(element, nodes);
        for (int node : nodes) {
          massOfNode[node] += plate.massKg() / (4 * nx * nz);
        }
      }
    }
    addRoot(root, dx);
    addLayers(footRows, layersPaPerM * dx * dz);
    solver = LinearSolverFactory_DDRM.chol(size);
    if (!solver.setA(stiffness.copy())) {
      throw new IllegalStateException("not held");
    }
  }

  private int node(int i, int j) {
    return j * (nx + 1) + i;
  }

  private void add(DMatrixRMaj element, int[] nodes) {
    for (int r = 0; r < 12; r++) {
      for (int c = 0; c < 12; c++) {
        int row = 3 * nodes[r / 3] + r % 3;
        int col = 3 * nodes[c / 3] + c % 3;
        stiffness.add(row, col, element.get(r, c));
      }
    }
  }

  /** Springs gathered at the nodes of the foot; the middle part only. */
  private void addRoot(PlateRoot.Elastic root, double dx) {
    double reach = root.supportedFraction() * plate.lengthM() / 2;
    for (int i = 0; i <= nx; i++) {
      double x = i * dx - plate.lengthM() / 2;
      double from = Math.max(-reach, x - dx / 2);
      double to = Math.min(reach, x + dx / 2);
      double length = Math.max(0, to - from);
      int at = 3 * node(i, 0);
      stiffness.add(at, at, root.translationNPerM2() * length);
      stiffness.add(at + 2, at + 2, root.rotationNPerRad() * length);
    }
  }

  /** A quarter of the layer under an element to each of its corners. */
  private void addLayers(int rows, double perElement) {
    for (int i = 0; i < nx; i++) {
      for (int j = 0; j < rows; j++) {
        for (int node :
            new int[] {node(i, j), node(i + 1, j), node(i + 1, j + 1), node(i, j + 1)}) {
          stiffness.add(3 * node, 3 * node, perElement / 4);
        }
      }
    }
  }

  private DMatrixRMaj element(double dx, double dz) {
    DMatrixRMaj corners = new DMatrixRMaj(12, 12);
    double[][] at = {{0, 0}, {dx, 0}, {dx, dz}, {0, dz}};
    for (int c = 0; c < 4; c++) {
      for (int p = 0; p < 12; p++) {
        corners.set(3 * c, p, monomial(p, 0, 0, at[c][0], at[c][1]));
        corners.set(3 * c + 1, p, monomial(p, 1, 0, at[c][0], at[c][1]));
        corners.set(3 * c + 2, p, monomial(p, 0, 1, at[c][0], at[c][1]));
      }
    }
    DMatrixRMaj inverse = new DMatrixRMaj(12, 12);
    CommonOps_DDRM.invert(corners, inverse);
    DMatrixRMaj energy = new DMatrixRMaj(12, 12);
    for (int g = 0; g < 4; g++) {
      for (int h = 0; h < 4; h++) {
        double weight = WEIGHT[g] * WEIGHT[h] * dx * dz / 4;
        addEnergy(energy, dx * (1 + GAUSS[g]) / 2, dz * (1 + GAUSS[h]) / 2, weight);
      }
    }
    DMatrixRMaj half = new DMatrixRMaj(12, 12);
    DMatrixRMaj whole = new DMatrixRMaj(12, 12);
    CommonOps_DDRM.multTransA(inverse, energy, half);
    CommonOps_DDRM.mult(half, inverse, whole);
    return whole;
  }

  private void addEnergy(DMatrixRMaj energy, double x, double z, double weight) {
    double nu = plate.poisson();
    double d = plate.bendingStiffnessNM() * weight;
    for (int p = 0; p < 12; p++) {
      double pxx = monomial(p, 2, 0, x, z);
      double pzz = monomial(p, 0, 2, x, z);
      double pxz = monomial(p, 1, 1, x, z);
      for (int q = 0; q < 12; q++) {
        double qxx = monomial(q, 2, 0, x, z);
        double qzz = monomial(q, 0, 2, x, z);
        double qxz = monomial(q, 1, 1, x, z);
        energy.add(
            p,
            q,
            d * (pxx * qxx + pzz * qzz + nu * (pxx * qzz + pzz * qxx) + 2 * (1 - nu) * pxz * qxz));
      }
    }
  }

  private static double monomial(int p, int dx, int dz, double x, double z) {
    return power(POWERS[p][0], dx, x) * power(POWERS[p][1], dz, z);
  }

  private static double power(int exponent, int derivatives, double value) {
    double factor = 1;
    for (int i = 0; i < derivatives; i++) {
      factor *= exponent - i;
    }
    return factor == 0 ? 0 : factor * Math.pow(value, exponent - derivatives);
  }

  /** Deflection per force at a node of the top edge, counted from the -X end, m/N. */
  double topEdgeFlexibilityMPerN(int i) {
    DMatrixRMaj load = new DMatrixRMaj(stiffness.numRows, 1);
    int at = 3 * node(i, nz);
    load.set(at, 1);
    DMatrixRMaj answer = new DMatrixRMaj(stiffness.numRows, 1);
    solver.solve(load, answer);
    return answer.get(at);
  }

  /** Natural frequencies from the flexibility of the nodes that carry mass, Hz, lowest first. */
  double[] frequenciesHz(int count) {
    int nodes = massOfNode.length;
    DMatrixRMaj unit = new DMatrixRMaj(stiffness.numRows, nodes);
    for (int i = 0; i < nodes; i++) {
      unit.set(3 * i, i, Math.sqrt(massOfNode[i]));
    }
    DMatrixRMaj answers = new DMatrixRMaj(stiffness.numRows, nodes);
    solver.solve(unit.copy(), answers);
    DMatrixRMaj dynamic = new DMatrixRMaj(nodes, nodes);
    CommonOps_DDRM.multTransA(unit, answers, dynamic);
    var eigen = DecompositionFactory_DDRM.eig(nodes, false, true);
    eigen.decompose(dynamic);
    return java.util.stream.IntStream.range(0, nodes)
        .mapToDouble(i -> eigen.getEigenvalue(i).getReal())
        .boxed()
        .sorted(java.util.Comparator.reverseOrder())
        .limit(count)
        .mapToDouble(e -> 1 / (2 * Math.PI * Math.sqrt(e)))
        .toArray();
  }
}
