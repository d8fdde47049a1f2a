package org.standproud.mechanics.holding.jaw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.reach.SmallShop;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;

/**
 * Worked by hand: at a grip of 15 mm and a cut 60 mm above the jaws a gap rocks the cut by 75/15 =
 * 5 times itself; clamping closes 5 um; more than 100 um at the cut is a hinge (own model).
 */
class JawBearingsTest {

  private static final double GRIP = .015;

  private static Vise vise(JawSurface surface, double liftRad) {
    Vise vise = SmallShop.vise();
    return ViseBuilder.builder(vise)
        .jawSurface(surface)
        .movableJawLiftRad(Band.exactly(liftRad))
        .build();
  }

  private static JawBearings bearings(
      Vise vise,
      @Nullable StockSurface surface,
      @Nullable Double spotM,
      double gripM,
      Packing... packing) {
    Hold hold = Hold.in(vise, gripM).packing(List.of(packing)).held();
    Stock stock =
        StockBuilder.builder()
            .lengthM(.12)
            .thicknessM(.01)
            .heightM(.08)
            .material(SmallShop.steel())
            .surface(surface)
            .highSpotM(spotM)
            .deburred(true)
            .build();
    return JawBearings.of(hold, stock, gripM, .06, 5e-6);
  }

  private static JawBearings rolled(Packing... packing) {
    return bearings(vise(JawSurface.GROUND, 0), StockSurface.ROLLED, null, GRIP, packing);
  }

  private static Packing packing(JawSide side, PackingKind kind, double sizeM) {
    return new Packing(side, kind, PackingMaterial.COPPER, sizeM, GRIP / 2);
  }

  /** Rolled: 50 um taken, 45 left, 225 at the cut. */
  @Test
  void aRolledFaceIsAHingeOnAnUnmeasuredSpot() {
    JawBearings bearings = rolled();
    assertThat(bearings.rocking()).isEqualTo(Rocking.ON_AN_ASSUMED_SPOT);
    assertThat(bearings.hinged()).isTrue();
    assertThat(bearings.gapM()).isCloseTo(45e-6, within(1e-12));
    assertThat(bearings.likely().movable()).isEqualTo(Bearing.lineAt(GRIP / 2));
    assertThat(bearings.adverse().fixed()).isEqualTo(Bearing.withoutGap(GRIP));
    assertThat(bearings.likely().fixed()).isEqualTo(Bearing.wholeFace(GRIP));
    assertThat(bearings.assumptions())
        .singleElement()
        .satisfies(a -> assertThat(a.toString()).contains("up to 0.05 mm"));
  }

  /** The same 45 um on a grip as deep as the cut is high: twice, 90 um at the cut. */
  @Test
  void theSameSpotOnADeepGripDoesNotRock() {
    JawBearings bearings = bearings(vise(JawSurface.GROUND, 0), StockSurface.ROLLED, null, .06);
    assertThat(bearings.rocking()).isEqualTo(Rocking.NO);
    assertThat(bearings.hinged()).isFalse();
    assertThat(bearings.likely().movable()).isEqualTo(Bearing.withoutGap(.06));
    assertThat(bearings.adverse().fixed()).isEqualTo(Bearing.wholeFace(.06));
    assertThat(bearings.adverse().movable()).isEqualTo(Bearing.lineAt(.03));
  }

  /** Card of 0.2 mm takes a third, 60 um: nothing is left. Behind it the fixed face stays rough. */
  @Test
  void cardAtTheMovableJawTakesUpTheSpotThereAndAtTheFixedJawThatOneThere() {
    JawBearings movable = rolled(packing(JawSide.MOVABLE, PackingKind.CARD, .0002));
    assertThat(movable.rocking()).isEqualTo(Rocking.NO);
    assertThat(movable.gapM()).isZero();
    assertThat(movable.adverse().fixed()).isEqualTo(Bearing.withoutGap(GRIP));
    JawBearings fixed = rolled(packing(JawSide.FIXED, PackingKind.CARD, .0002));
    assertThat(fixed.rocking()).isEqualTo(Rocking.ON_AN_ASSUMED_SPOT);
    assertThat(fixed.adverse().fixed()).isEqualTo(Bearing.wholeFace(GRIP));
  }

  /** Sheet takes a tenth: 20 um of 45 leave 25, 125 at the cut; 30 leave 15, 75 at the cut. */
  @Test
  void sheetTakesUpATenthOfItsThickness() {
    JawBearings thin = rolled(packing(JawSide.MOVABLE, PackingKind.SHEET, .0002));
    assertThat(thin.gapM()).isCloseTo(25e-6, within(1e-12));
    assertThat(thin.hinged()).isTrue();
    assertThat(rolled(packing(JawSide.MOVABLE, PackingKind.SHEET, .0003)).hinged()).isFalse();
  }

  /** A wire of 50 um would keep the face off by 40: 5 um are left. */
  @Test
  void aWireKeepsTheFaceOffByFourFifthsOfItsSize() {
    assertThat(rolled(packing(JawSide.MOVABLE, PackingKind.WIRE, 50e-6)).gapM())
        .isCloseTo(5e-6, within(1e-12));
    assertThat(rolled(packing(JawSide.MOVABLE, PackingKind.WIRE, .003)).likely().movable())
        .isEqualTo(Bearing.lineAt(GRIP / 2));
  }

  @Test
  void aWornJawIsAHingeOnAGapThoughTheStockIsFlat() {
    JawBearings worn = bearings(vise(JawSurface.WORN, 0), StockSurface.MACHINED, 0.0, GRIP);
    assertThat(worn.rocking()).isEqualTo(Rocking.ON_A_GAP);
    assertThat(worn.gapM()).isCloseTo(45e-6, within(1e-12));
    assertThat(worn.assumptions()).isEmpty();
    assertThat(bearings(vise(JawSurface.WORN, 0), StockSurface.MACHINED, null, GRIP).rocking())
        .isEqualTo(Rocking.ON_A_GAP);
    assertThat(bearings(vise(JawSurface.GROUND, 0), StockSurface.MACHINED, 0.0, GRIP).rocking())
        .isEqualTo(Rocking.NO);
  }

  /** 3 mrad over 15 mm are 45 um; 1 mrad are 15, of which 10 stay: 50 at the cut. */
  @Test
  void aJawThatLiftsIsAHingeOnAGapWhateverTheStock() {
    assertThat(bearings(vise(JawSurface.GROUND, .003), StockSurface.ROLLED, null, GRIP).rocking())
        .isEqualTo(Rocking.ON_A_GAP);
    JawBearings little = bearings(vise(JawSurface.GROUND, .001), StockSurface.ROLLED, null, GRIP);
    assertThat(little.rocking()).isEqualTo(Rocking.ON_AN_ASSUMED_SPOT);
    JawBearings alone = bearings(vise(JawSurface.GROUND, .001), StockSurface.MACHINED, 0.0, GRIP);
    assertThat(alone.rocking()).isEqualTo(Rocking.NO);
    assertThat(alone.gapM()).isCloseTo(10e-6, within(1e-12));
  }

  /** Measured 30 um: 25 left, 125 at the cut, and no assumption. */
  @Test
  void aMeasuredSpotIsAGap() {
    JawBearings measured = bearings(vise(JawSurface.GROUND, 0), StockSurface.MACHINED, 30e-6, GRIP);
    assertThat(measured.rocking()).isEqualTo(Rocking.ON_A_GAP);
    assertThat(measured.gapM()).isCloseTo(25e-6, within(1e-12));
    assertThat(measured.assumptions()).isEmpty();
  }

  @Test
  void aFaceWithoutADescriptionIsTakenAsRolled() {
    assertThat(bearings(vise(JawSurface.GROUND, 0), null, null, GRIP).gapM())
        .isEqualTo(rolled().gapM());
  }

  @Test
  void withoutAGapAFaceIsKeptToItsMiddleThirdAndALineStaysWhereItIs() {
    JawBearings.Pair pair =
        new JawBearings.Pair(Bearing.lineAt(.002), Bearing.wholeFace(.03)).withoutGap(.03);
    assertThat(pair.movable()).isEqualTo(Bearing.lineAt(.002));
    assertThat(pair.fixed().shallowestM()).isCloseTo(.01, within(1e-12));
    assertThat(pair.fixed().deepestM()).isCloseTo(.02, within(1e-12));
  }

  /** Half a wire, or a third of the grip, from either edge. */
  @Test
  void aWireLiesInsideTheGripAndWithinItsMiddleThird() {
    assertThat(BestPackingDepth.shallowestM(.030, .003)).isCloseTo(.010, within(1e-12));
    assertThat(BestPackingDepth.shallowestM(.006, .005)).isCloseTo(.0025, within(1e-12));
    assertThat(BestPackingDepth.deepestM(.030, .003)).isCloseTo(.020, within(1e-12));
    assertThat(BestPackingDepth.deepestM(.006, .005)).isCloseTo(.0035, within(1e-12));
    assertThat(BestPackingDepth.of(.006, .006, .06, 20_000, 0, 0, 100).depthM())
        .isCloseTo(.003, within(1e-9));
  }
}
