package org.standproud.mechanics.plate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two computations that share no formula but the energy of the plate must agree. */
class FiniteElementComparisonTest {

  /**
   * Own comparison, no published value. Meshes of about 16 elements along the longer side; lumped
   * masses: 2 % on frequencies, 2.5 % on flexibility (3.5 % where the jaws end short of the stock).
   */
  @ParameterizedTest(name = "length {0} stick-outs, root {1} D/a, held {2}")
  @CsvSource({
    "1, 1e5, 1, 14, 14",
    "1, 3, 1, 14, 14",
    "2.5, 1e5, 1, 24, 10",
    "2.5, 3, 1, 24, 10",
    "2.5, 3, 0.5, 24, 10",
    "4, 10, 1, 32, 8",
    "0.5, 10, 1, 8, 16"
  })
  void finiteElementsAgreeWithTheSeries(double bOverA, double turn, double held, int nx, int nz) {
    double a = 0.05;
    PlateGeometry plate = new PlateGeometry(a, a * bOverA, 0.004, 205e9, 0.29, 7850);
    double unit = plate.bendingStiffnessNM() / a;
    PlateRoot.Elastic root = new PlateRoot.Elastic(50 * turn * unit / (a * a), turn * unit, held);
    FiniteElementPlate mesh = new FiniteElementPlate(plate, root, nx, nz);
    CantileverPlate series = new CantileverPlate(plate, root, RitzOrder.FINE);
    PlatePoint mid = new PlatePoint(0, a);
    PlatePoint corner = new PlatePoint(plate.lengthM() / 2, a);
    double tolerance = held < 1 ? 3.5 : 2.5;
    assertThat(mesh.topEdgeFlexibilityMPerN(nx / 2))
        .isCloseTo(series.flexibilityMPerN(mid, mid), Percentage.withPercentage(tolerance));
    assertThat(mesh.topEdgeFlexibilityMPerN(nx))
        .isCloseTo(series.flexibilityMPerN(corner, corner), Percentage.withPercentage(tolerance));
    double[] meshHz = mesh.frequenciesHz(4);
    List<PlateMode> modes = series.modes(4);
    for (int i = 0; i < 4; i++) {
      assertThat(meshHz[i])
          .isCloseTo(modes.get(i).frequencyHz(), Percentage.withPercentage(held < 1 ? 3 : 2));
    }
  }
}
