package org.standproud.mechanics.plate;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;

/**
 * A strip of plate standing out of an elastic layer, by finite elements of Euler and Bernoulli with
 * a layer and a mass that go with the cubics of the element (consistent; any textbook of finite
 * elements): a computation apart from the one under test.
 */
final class BeamOnLayers {

  private static final double[][] BEND = {
    {12, 6, -12, 6}, {6, 4, -6, 2}, {-12, -6, 12, -6}, {6, 2, -6, 4}
  };
  private static final double[][] VALUE = {
    {156, 22, 54, -13}, {22, 4, 13, -3}, {54, 13, 156, -22}, {-13, -3, -22, 4}
  };

  private final DMatrixRMaj stiffness;
  private final DMatrixRMaj mass;

  /**
   * Sets the strip up.
   *
   * @param bendingNM bending stiffness per metre
   * @param massKgPerM2 mass per area, of the part above the layer only
   * @param gripM height in the layer
   * @param stickOutM height above it
   * @param layersPaPerM stiffness of the layer
   * @param elements elements of either part
   */
  BeamOnLayers(
      double bendingNM,
      double massKgPerM2,
      double gripM,
      double stickOutM,
      double layersPaPerM,
      int elements) {
    int size = 2 * (2 * elements + 1);
    stiffness = new DMatrixRMaj(size, size);
    mass = new DMatrixRMaj(size, size);
    for (int e = 0; e < 2 * elements; e++) {
      double l = (e < elements ? gripM : stickOutM) / elements;
      double layer = e < elements ? layersPaPerM : 0;
      double perArea = e < elements ? 0 : massKgPerM2;
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          double lengths = (i % 2 == 1 ? l : 1) * (j % 2 == 1 ? l : 1);
          double value = VALUE[i][j] * lengths * l / 420;
          stiffness.add(
              2 * e + i, 2 * e + j, bendingNM / (l * l * l) * BEND[i][j] * lengths + layer * value);
          mass.add(2 * e + i, 2 * e + j, perArea * value);
        }
      }
    }
  }

  /** Deflection of the top edge for a unit force there. */
  double tipGive() {
    DMatrixRMaj f = new DMatrixRMaj(stiffness.numRows, 1);
    f.set(stiffness.numRows - 2, 1);
    DMatrixRMaj x = new DMatrixRMaj(stiffness.numRows, 1);
    var solver = LinearSolverFactory_DDRM.chol(stiffness.numRows);
    solver.setA(stiffness.copy());
    solver.solve(f, x);
    return x.get(stiffness.numRows - 2);
  }

  double firstFrequencyHz() {
    DMatrixRMaj x = new DMatrixRMaj(stiffness.numRows, stiffness.numRows);
    var solver = LinearSolverFactory_DDRM.chol(stiffness.numRows);
    solver.setA(stiffness.copy());
    solver.solve(mass.copy(), x);
    var eigen = DecompositionFactory_DDRM.eig(x.numRows, false, false);
    eigen.decompose(x);
    double greatest = 0;
    for (int i = 0; i < x.numRows; i++) {
      greatest = Math.max(greatest, eigen.getEigenvalue(i).getReal());
    }
    return 1 / (2 * Math.PI * Math.sqrt(greatest));
  }
}
