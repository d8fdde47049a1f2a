package org.standproud.mechanics.evidence.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.reach.SmallShop;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialBuilder;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;

/** The evidence on the root of the stock in its jaws, each way. */
class RootFactsTest {

  private static Packing wire(JawSide side) {
    return new Packing(side, PackingKind.WIRE, PackingMaterial.ALUMINIUM, 0.003, 0.01);
  }

  private static Evidence evidence(double clampingForceN, Packing... packing) {
    Setup bare = SmallShop.clamped(Band.exactly(clampingForceN), Band.exactly(0.15));
    Hold hold = bare.hold();
    Hold packed =
        hold.but()
            .clamping(hold.clampingForceN(), null, hold.jawFriction())
            .packing(List.of(packing))
            .held();
    return EvidenceGathering.of(
        new Setup(
            bare.job(),
            bare.stock(),
            packed,
            bare.machine(),
            bare.cutter(),
            bare.cut(),
            bare.units()));
  }

  private static Band band(Evidence evidence, Fact fact) {
    return ((Value.Quantity) evidence.get(fact)).band();
  }

  /** Brass of 124 MPa is likely the harder in stock of 120 MPa and the softer in one of 130 MPa. */
  @Test
  void aWirePressesTheStockOnlyWhereItIsTheHarder() {
    assertThat(brassWirePressure(120e6)).isGreaterThan(1.2 * brassWirePressure(130e6));
  }

  private static double brassWirePressure(double yieldPa) {
    Setup bare = SmallShop.clamped(Band.exactly(20e3), Band.exactly(0.15));
    Stock stock = bare.stock();
    Material steel = stock.material();
    Material soft = MaterialBuilder.builder(steel).yieldPa(Band.exactly(yieldPa)).build();
    Packing brass =
        new Packing(JawSide.MOVABLE, PackingKind.WIRE, PackingMaterial.BRASS, 0.003, 0.01);
    Evidence evidence =
        EvidenceGathering.of(
            new Setup(
                bare.job(),
                StockBuilder.builder(stock).material(soft).build(),
                bare.hold().but().packing(List.of(brass)).held(),
                bare.machine(),
                bare.cutter(),
                bare.cut(),
                bare.units()));
    return band(evidence, Vocabulary.JAW_PRESSURE_RATIO).likely();
  }

  /** 120 mm of stock in jaws 150 mm wide. */
  @Test
  void theStockIsHeldOverTheLesserOfItsLengthAndTheJaws() {
    assertThat(band(evidence(20e3), Vocabulary.CONTACT_LENGTH).likely()).isEqualTo(0.12);
  }

  /** 20 mm of grip: the gap and what is still touching make it up. */
  @Test
  void theGapAndTheContactMakeUpTheGrip() {
    Evidence loose = evidence(4e3);
    Band gap = band(loose, Vocabulary.JAW_GAP_DEPTH);
    Band ratio = band(loose, Vocabulary.CONTACT_RATIO);
    assertThat(gap.high()).isCloseTo(0.02 * (1 - ratio.low()), within(1e-12));
    assertThat(gap.low()).isCloseTo(0.02 * (1 - ratio.high()), within(1e-12));
    assertThat(band(evidence(30e3), Vocabulary.JAW_GAP_DEPTH).likely())
        .isLessThanOrEqualTo(gap.likely());
  }

  @Test
  void twoWiresOppositeOneAnotherAreAHingeEachWay() {
    Evidence hinged = evidence(20e3, wire(JawSide.FIXED), wire(JawSide.MOVABLE));
    assertThat(band(hinged, Vocabulary.TURNING_STIFFNESS_FIXED).high()).isZero();
    assertThat(band(hinged, Vocabulary.TURNING_STIFFNESS_MOVABLE).high()).isZero();
  }

  @Test
  void flatJawsTurnLessThanAWireAtTheMovableOne() {
    Evidence flat = evidence(20e3);
    Evidence line = evidence(20e3, wire(JawSide.MOVABLE));
    for (Fact way :
        List.of(Vocabulary.TURNING_STIFFNESS_FIXED, Vocabulary.TURNING_STIFFNESS_MOVABLE)) {
      assertThat(band(line, way).likely()).as(way.name()).isPositive();
      assertThat(band(flat, way).likely()).as(way.name()).isGreaterThan(band(line, way).likely());
    }
  }
}
