package org.standproud.mechanics.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.force.ForceVector;
import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.mechanics.holding.slip.Margin;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Stop;
import org.standproud.setup.Vise;

/**
 * Worked by hand from statics: N 20 kN, grip 15 mm, cut 60 mm above the jaws; jaws of 0.4 and 0.1
 * GN/m take a fifth of a push toward the fixed jaw from the clamping force.
 */
class DrawnHoldTest {

  private static HoldingInput input(HoldingLoad load, Packing... packing) {
    return new HoldingInput(
        ViseHoldingTest.hold(
            ViseHoldingTest.vise(JawSurface.GROUND, 0),
            .015,
            Band.exactly(20_000),
            Band.exactly(.15),
            List.of(packing)),
        ViseHoldingTest.stock(StockSurface.MACHINED, 0.0),
        load,
        FaceState.CLEAN);
  }

  private static Packing wire(PackingKind kind, JawSide side) {
    return new Packing(side, kind, PackingMaterial.COPPER, .003, .0075);
  }

  private static HoldDraw draw(double bearing, double spotM, Peaks peaks, ForceVector... corners) {
    return new HoldDraw(
        20_000,
        .15,
        bearing,
        spotM,
        .3,
        .01,
        true,
        4e8,
        1e8,
        0,
        .6,
        .5,
        .5,
        205e9,
        310e6,
        true,
        Stop.NONE,
        peaks,
        Stream.of(corners).flatMapToDouble(c -> DoubleStream.of(c.xN(), c.yN(), c.zN())).toArray(),
        .5);
  }

  private static DrawnHold.Margins margins(double bearing, Peaks peaks, ForceVector... corners) {
    return DrawnHold.of(input(ViseHoldingTest.load(0, 0, 0, .06)))
        .at(draw(bearing, 0, peaks, corners))
        .margins();
  }

  /** The movable jaw bears at most w deep, 7.5 (1 + b) mm: 20 000 w/(60 + 0.2 w) over 400 N. */
  @ParameterizedTest(name = "bearing {0}: {1} mm deep")
  @CsvSource({"0, 7.5, 6.097561", "0.3333333333, 10, 8.064516", "1, 15, 11.904762"})
  void whereTheJawBearsIsDrawnBetweenItsMiddleAndItsWholeFace(
      double bearing, double deepestMm, double margin) {
    Peaks toward = new Peaks(0, 0, 400, 0, 0, 0);
    assertThat(margins(bearing, toward).tipTowardFixed()).isCloseTo(margin, within(1e-6));
    assertThat(20_000 * deepestMm / (60 + .2 * deepestMm) / 400).isCloseTo(margin, within(1e-6));
  }

  /** Away: 20 000 (15 - w)/(60 + 15) over 400 N, w at least 7.5, 6.25, 5, 2.5 and 0 mm. */
  @ParameterizedTest(name = "bearing {0}")
  @CsvSource({"0, 5", "0.3333333333, 6.666667", "1, 10"})
  void awayFromTheFixedJawTheShallowestBearingCounts(double bearing, double margin) {
    assertThat(margins(bearing, new Peaks(0, 0, 0, 400, 0, 0)).tipAway())
        .isCloseTo(margin, within(1e-6));
  }

  /** 2 mu N = 6000 N against hypot(300, 400) and against 400 N upward. */
  @Test
  void slipAndLiftAreDrawnToo() {
    DrawnHold.Margins margins =
        margins(0, new Peaks(300, 0, 0, 0, 400, 0), new ForceVector(300, 0, 400));
    assertThat(margins.slip()).isCloseTo(12, within(1e-9));
    assertThat(margins.lift()).isCloseTo(15, within(1e-9));
    assertThat(margins.tipAway()).isEqualTo(Margin.GREATEST);
    assertThat(margins.least()).isEqualTo(margins.combined()).isLessThan(12);
  }

  /**
   * A spot on the fixed jaw: clamping closes a low one, a high one keeps the face off; in between
   * nothing jumps, and the stock never falls over under clamping alone (statics).
   */
  @Test
  void aHigherSpotMakesTheRootSofterWithoutAJumpAndNeverLetsItFallOver() {
    DrawnHold hold = DrawnHold.of(input(ViseHoldingTest.load(0, 0, 0, .06)));
    Peaks push = new Peaks(0, 0, 400, 80, 0, 0);
    double tip = hold.at(draw(1.0 / 3, 0, push)).margins().tipTowardFixed();
    double before = hold.at(draw(1.0 / 3, 0, push)).turningTowardNmPerRad();
    double flat = before;
    for (int um = 1; um <= 200; um++) {
      DrawnHold.State state = hold.at(draw(1.0 / 3, um * 1e-6, push));
      assertThat(state.holds()).isTrue();
      assertThat(state.margins().tipTowardFixed()).isEqualTo(tip);
      assertThat(state.turningTowardNmPerRad())
          .isLessThanOrEqualTo(before * (1 + 1e-9))
          .isGreaterThan(0.7 * before);
      before = state.turningTowardNmPerRad();
    }
    assertThat(before).isLessThan(flat);
  }

  @Test
  void theLeastOfTheMarginsIsWhicheverIsLeast() {
    assertThat(new DrawnHold.Margins(1, 2, 3, 4, 5).least()).isEqualTo(1);
    assertThat(new DrawnHold.Margins(5, 1, 3, 4, 5).least()).isEqualTo(1);
    assertThat(new DrawnHold.Margins(5, 2, 1, 4, 5).least()).isEqualTo(1);
    assertThat(new DrawnHold.Margins(5, 2, 3, 1, 5).least()).isEqualTo(1);
    assertThat(new DrawnHold.Margins(5, 2, 3, 4, 1).least()).isEqualTo(1);
  }

  /** w/(60 + 0.2 w) = (15 - w)/75, so 0.2 w^2 + 132 w - 900 = 0 in mm: w = 6.7492. */
  @Test
  void thePackingForTwoEqualPushesLiesWhereBothLimitsAreTheSame() {
    HoldingLoad both =
        new HoldingLoad(
            Band.exactly(0),
            Band.exactly(0),
            Band.exactly(-300),
            Band.exactly(300),
            Band.exactly(0),
            Band.exactly(0),
            .06,
            0,
            0);
    assertThat(ViseHolding.of(input(both)).bestPackingDepthM().likely())
        .isCloseTo(.0067492, within(1e-6));
  }

  /**
   * Hertz (Johnson 1985 ch. 4): copper wire of 3 mm on steel under 166.7 kN/m, 1/E' = 0.8844/117
   * GPa + 0.9159/205 GPa, p_max = sqrt(p E'/(pi R)) = 1714.9 MPa, over 1.79 times 69 MPa.
   */
  @Test
  void aCopperWireFlowsFlatOnEitherSideAndAStripOfItIsNotJudged() {
    HoldingLoad load = ViseHoldingTest.load(0, 100, 0, .06);
    for (JawSide side : JawSide.values()) {
      assertThat(
              ViseHolding.of(input(load, wire(PackingKind.WIRE, side)))
                  .packingYieldRatio()
                  .likely())
          .isCloseTo(13.885, within(.01));
    }
    ViseHolding strip = ViseHolding.of(input(load, wire(PackingKind.STRIP, JawSide.MOVABLE)));
    assertThat(strip.packingYieldRatio()).isEqualTo(Band.exactly(0));
    // M = N g/8 = 37.5 N m over L t^2/6 of 120 x 10 mm: 18.75 MPa of 310
    assertThat(strip.bowMargin().likely()).isCloseTo(310 / 18.75, within(1e-6));
    assertThat(ViseHolding.of(input(load)).bowMargin()).isEqualTo(Band.exactly(Margin.GREATEST));
  }

  /** 20 kN over 120 x 15 mm are 11.11 MPa, 0.03584 of a yield stress of 310 MPa. */
  @Test
  void thePressureIsNeverLessThanItsMean() {
    Band ratio =
        ViseHolding.of(
                input(
                    ViseHoldingTest.load(0, 100, 0, .06), wire(PackingKind.WIRE, JawSide.MOVABLE)))
            .jawPressureRatio();
    assertThat(ratio.low()).isCloseTo(.035842, within(1e-6));
    assertThat(ratio.high()).isBetween(.036, .1);
  }

  /**
   * As {@link HoldingEndTest}: with a wire in the middle of the movable jaw 20 000 w/(60 + w/5).
   */
  @Test
  void aGapBeginsUnderLessThanATip() {
    Packing middle = wire(PackingKind.WIRE, JawSide.MOVABLE);
    ViseHolding toward = ViseHolding.of(input(ViseHoldingTest.load(0, 100, 0, .06), middle));
    // lever 7.5 - 5 mm, N 2.5/(65 + 0.5) over 100 N
    assertThat(toward.noGapMarginTowardFixed().likely()).isCloseTo(7.633588, within(1e-6));
    ViseHolding away = ViseHolding.of(input(ViseHoldingTest.load(0, -100, 0, .06), middle));
    // lever 10 - 7.5 mm, N 2.5/70 over 100 N
    assertThat(away.noGapMarginAway().likely()).isCloseTo(7.142857, within(1e-6));
  }

  /** The card is paper, whatever lies at the other jaw. */
  @Test
  void aWireAtOneJawDoesNotStiffenTheCardAtTheOther() {
    Packing card = new Packing(JawSide.FIXED, PackingKind.CARD, PackingMaterial.PAPER, .0002, 0);
    HoldingLoad load = ViseHoldingTest.load(0, 100, 0, .06);
    Band alone = ViseHolding.of(input(load, card)).rootStiffnessNPerM();
    Band beside =
        ViseHolding.of(input(load, card, wire(PackingKind.WIRE, JawSide.MOVABLE)))
            .rootStiffnessNPerM();
    assertThat(beside.likely()).isEqualTo(alone.likely());
  }

  private static List<String> assumed(Hold hold) {
    HoldingInput input = input(ViseHoldingTest.load(0, 100, 0, .06));
    return ViseHolding.of(new HoldingInput(hold, input.stock(), input.load(), FaceState.CLEAN))
        .assumptions()
        .stream()
        .map(a -> a.input().text())
        .toList();
  }

  @Test
  void aSeatAndAStopThatAreNotGivenAreAssumptions() {
    Hold given = input(ViseHoldingTest.load(0, 100, 0, .06)).hold();
    assertThat(assumed(given)).doesNotContain("/hold/seat", "/hold/stop");
    assertThat(assumed(given.but().seat(null).held())).contains("/hold/seat");
    assertThat(assumed(given.but().stop(null).held())).contains("/hold/stop");
  }

  @Test
  void aViseSofterThanAnyIsRefusedByName() {
    Vise vise = ViseHoldingTest.vise(JawSurface.GROUND, 0.06);
    HoldingInput input = input(ViseHoldingTest.load(0, 100, 0, .06));
    Hold lifting =
        ViseHoldingTest.hold(vise, .015, Band.exactly(20_000), Band.exactly(.15), List.of());
    assertThatThrownBy(
            () ->
                ViseHolding.of(
                    new HoldingInput(lifting, input.stock(), input.load(), FaceState.CLEAN)))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("tilt of the movable jaw");
  }
}
