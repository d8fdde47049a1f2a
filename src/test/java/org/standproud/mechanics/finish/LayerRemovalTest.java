package org.standproud.mechanics.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.setup.StockCondition;
import org.standproud.setup.StockSurface;

class LayerRemovalTest {

  private static final double STEEL_PA = 210e9;
  private static final double NU = 0.3;

  private static final PublishedTable STONEY =
      new PublishedTable(
          Subject.FINISH,
          "6 s d (1 - nu)/(E h^2), Stoney, Proc. R. Soc. A 82 (1909) 172, with the modulus of a"
              + " plate (from memory)",
          SourceTag.DERIVED);

  /** Of a layer of a thousandth of the thickness, by Stoney's formula. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0} mm thick, {1} MPa [derived]")
  @CsvSource({"12, 200, 0.000333333", "20, 100, 0.0001", "6, 250, 0.000833333"})
  void aThinLayerBowsThePlateAsStoneyFound(double thicknessMm, double mpa, double perM) {
    LayerRemoval plate = new LayerRemoval(STEEL_PA, NU, thicknessMm / 1e3, true);
    double layerM = thicknessMm / 1e6;
    STONEY
        .row("curvature with a thousandth of " + thicknessMm + " mm off, " + mpa + " MPa")
        .figure("curvature", "1/m", perM, plate.curvaturePerM(mpa * 1e6, layerM), 0.003 * perM);
  }

  /**
   * Treuting and Read 1951, from memory: with P the curvature after removal down to the height z
   * above the lower face, equal both ways, {@code s(z) = -E/(6 (1 - nu)) (z^2 P' + 4 z P - 2
   * integral of P from z to h)}. It has to return the stress that was put in.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.5, 0.7, 0.9})
  void theStressComesBackFromTheCurvatureByTreutingAndRead(double place) {
    double h = 0.012;
    double surfacePa = 180e6;
    LayerRemoval plate = new LayerRemoval(STEEL_PA, NU, h, true);
    double z = place * h;
    double step = 1e-6 * h;
    double slope = (signed(plate, z + step, h) - signed(plate, z - step, h)) / (2 * step);
    double above =
        new IterativeLegendreGaussIntegrator(8, 1e-10, 1e-12)
            .integrate(100_000, at -> signed(plate, at, h), z, h * (1 - 1e-12));
    double back =
        -STEEL_PA / (6 * (1 - NU)) * (z * z * slope + 4 * z * signed(plate, z, h) - 2 * above);
    double u = 2 * place - 1;
    assertThat(back).isCloseTo(surfacePa * (3 * u * u - 1) / 2, within(1e-4 * surfacePa));
  }

  /** Hollow toward the cut side with tension there; one sign all the way for this stress. */
  private static double signed(LayerRemoval plate, double leftM, double h) {
    return plate.curvaturePerM(180e6, h - leftM);
  }

  /** The moment of the stress that is left, summed over a thousand slices instead of integrated. */
  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.25, 0.5, 0.8})
  void sliceBySliceTheMomentIsTheSame(double part) {
    double h = 0.02;
    double left = h * (1 - part);
    double moment = 0;
    int slices = 20_000;
    for (int i = 0; i < slices; i++) {
      double y = (i + 0.5) * left / slices;
      double u = 2 * y / h - 1;
      moment += 100e6 * (3 * u * u - 1) / 2 * (y - left / 2) * left / slices;
    }
    double perM = 12 * Math.abs(moment) / (STEEL_PA * left * left * left);
    assertThat(new LayerRemoval(STEEL_PA, NU, h, false).curvaturePerM(100e6, part * h))
        .isCloseTo(perM, within(1e-5 * perM));
  }

  /** Half of a symmetric stress has no moment about the middle only where the halves mirror. */
  @Test
  void nothingOffAndNoStressBowNothing() {
    LayerRemoval plate = new LayerRemoval(STEEL_PA, NU, 0.012, true);
    assertThat(plate.bowM(200e6, 0, 0.2)).isZero();
    assertThat(plate.bowM(0, 0.003, 0.2)).isZero();
  }

  /** Common practice, no source: 3 mm off one side of 12 mm cold drawn flat, 200 mm long. */
  @Test
  void coldDrawnFlatBowsByTenthsOfAMillimetreAndStretchedPlateByHundredths() {
    LayerRemoval steel = new LayerRemoval(STEEL_PA, NU, 0.012, true);
    LayerRemoval aluminium = new LayerRemoval(70e9, 0.33, 0.012, true);
    double drawn =
        LayerRemoval.stressOverYield(StockCondition.COLD_DRAWN, StockSurface.MACHINED).likely()
            * 450e6;
    double stretched =
        LayerRemoval.stressOverYield(StockCondition.STRETCHED, StockSurface.ROLLED).likely()
            * 276e6;
    assertThat(steel.bowM(drawn, 0.003, 0.2)).isBetween(0.2e-3, 1.5e-3);
    assertThat(aluminium.bowM(stretched, 0.003, 0.2)).isLessThan(0.2e-3);
  }

  @Test
  void moreThanTheStockIsRefused() {
    LayerRemoval plate = new LayerRemoval(STEEL_PA, NU, 0.012, true);
    assertThatThrownBy(() -> plate.curvaturePerM(1e8, 0.0119)).isInstanceOf(OutsideValidity.class);
  }
}
