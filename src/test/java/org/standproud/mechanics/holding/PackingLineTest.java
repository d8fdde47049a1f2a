package org.standproud.mechanics.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Material;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Stop;

/** Common practice, no source: soft copper wire marks no steel, and it marks soft aluminium. */
class PackingLineTest {

  private static final Material STOCK =
      ViseHoldingTest.stock(StockSurface.MACHINED, 0.0).material();

  /** Place in the band of yield at which copper has its likely 69 MPa. */
  private static final double LIKELY = 0.5;

  private static double ratio(PackingMaterial wire, double clampN, double stockYieldPa) {
    Hold hold =
        ViseHoldingTest.hold(
            ViseHoldingTest.vise(JawSurface.GROUND, 0),
            .015,
            Band.exactly(clampN),
            Band.exactly(.15),
            List.of(new Packing(JawSide.MOVABLE, PackingKind.WIRE, wire, .003, .0075)));
    HoldDraw draw =
        new HoldDraw(
            clampN,
            .15,
            0,
            0,
            .5,
            .01,
            true,
            4e8,
            1e8,
            0,
            .6,
            .5,
            LIKELY,
            205e9,
            stockYieldPa,
            true,
            Stop.NONE,
            new Peaks(0, 0, 0, 0, 0, 0),
            new double[0],
            .5);
    return PackingLine.stockYieldRatio(hold, STOCK, draw, 0.12, 205e9, stockYieldPa);
  }

  /** 2/sqrt(3) 1.5 69 = 119.5 MPa over 1.79 of 250 MPa is 0.267; of 35 MPa it is 1.907. */
  @Test
  void softCopperDentsOnlyWhatIsSofterThanItself() {
    assertThat(ratio(PackingMaterial.COPPER, 20_000, 250e6)).isCloseTo(0.267, within(1e-3));
    assertThat(ratio(PackingMaterial.COPPER, 20_000, 35e6)).isGreaterThan(1);
  }

  /** Of stock softer than the wire Hertz counts: it goes with the root of the clamping force. */
  @Test
  void onStockSofterThanTheWireTheHertzPressureCounts() {
    double light = ratio(PackingMaterial.STEEL, 5_000, 100e6);
    assertThat(ratio(PackingMaterial.STEEL, 20_000, 100e6)).isCloseTo(2 * light, within(1e-9));
    assertThat(light).isGreaterThan(1);
  }
}
