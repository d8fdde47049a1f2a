package org.standproud.mechanics.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.holding.jaw.Bearing;
import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.mechanics.holding.jaw.JawBearings.Pair;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.Seat;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Stop;

/**
 * Worked by hand for 20 kN on a grip 15 mm high and 120 mm long, the cut 60 mm above the jaws; jaws
 * of 0.4 and 0.1 GN/m that are 40 mm high; joint coefficient 0.6 (own model, from statics).
 */
class HoldingEndTest {

  private static final double GRIP = .015;
  private static final double LENGTH = .120;
  private static final double CLAMP = 20_000;

  private static Packing line(JawSide side, double depthM) {
    return new Packing(side, PackingKind.WIRE, PackingMaterial.COPPER, .003, depthM);
  }

  private static Hold hold(Seat seat, Packing... packing) {
    return Hold.in(ViseHoldingTest.vise(JawSurface.GROUND, 0), GRIP)
        .packing(List.of(packing))
        .seat(seat)
        .stop(Stop.NONE)
        .held();
  }

  private static JawRoot root(Hold hold) {
    return new JawRoot(hold, .6, Band::likely, 4e8, 1e8, LENGTH, GRIP, CLAMP);
  }

  private static HoldingEnd end(
      Hold hold, Peaks peaks, double shareToward, @Nullable Double movableLineM) {
    Bearing whole = Bearing.wholeFace(GRIP);
    return new HoldingEnd(
        new HoldingInput(
            hold,
            ViseHoldingTest.stock(StockSurface.MACHINED, 0.0),
            ViseHoldingTest.load(0, 0, 0, .06),
            FaceState.OILY),
        GRIP,
        LENGTH,
        CLAMP,
        .15,
        peaks,
        new Pair(whole, whole),
        new Pair(whole, whole),
        shareToward,
        0,
        root(hold),
        movableLineM,
        0);
  }

  private static Peaks across(double towardN, double awayN) {
    return new Peaks(0, 0, towardN, awayN, 0, 0);
  }

  /**
   * p = 20 000/(0.12 0.015) = 11.11 MPa = 113.3 kgf/cm2, delta = 0.6 sqrt(113.3) = 6.387 um, 2
   * p/delta = 3.4795e12 Pa/m, 6.263e9 N/m over the face; in series with the jaws.
   */
  @Test
  void theRootAcrossTheJawsIsJointAndJawInSeries() {
    JawRoot root = root(hold(Seat.BED));
    assertThat(root.fixedSideNPerM()).isCloseTo(3.7599e8, within(1e5));
    assertThat(root.movableSideNPerM()).isCloseTo(9.8428e7, within(1e4));
  }

  /** The joint alone tilts with 3.4795e12 L g^3/12 = 117 433 N m, the jaw with K h^2 = 160 000. */
  @Test
  void theMovableFaceTurnsWithJointAndJawInSeries() {
    assertThat(root(hold(Seat.BED)).movableFaceNmPerRad()).isCloseTo(67_726, within(20.0));
  }

  /** Paper of 0.2 mm and 60 MPa: 3e11 Pa/m, in series with half of the joint on either side. */
  @Test
  void cardBehindTheFaceSoftensTheSideItLiesOn() {
    Packing card = new Packing(JawSide.FIXED, PackingKind.CARD, PackingMaterial.PAPER, .0002, 0);
    JawRoot root = root(hold(Seat.BED, card));
    assertThat(root.fixedSideNPerM()).isCloseTo(2.1409e8, within(1e5));
    assertThat(root.movableSideNPerM()).isCloseTo(9.8428e7, within(1e4));
    Packing wire = line(JawSide.FIXED, .0075);
    assertThat(root(hold(Seat.BED, wire)).fixedSideNPerM()).isCloseTo(3.7599e8, within(1e5));
  }

  /**
   * For a push too small to part a face both faces turn alike: (k_f + k_m) q = F (H + g/2), with
   * k_f = 99 226 (117 433 and 640 000 in series) and k_m = 67 726: k = 166 952 60/67.5 = 148 402.
   */
  @Test
  void aSmallPushTurnsTheFootAgainstBothFacesWhicheverWay() {
    HoldingEnd end = end(hold(Seat.BED), across(5, 5), 0, null);
    assertThat(end.turningTowardNmPerRad()).isCloseTo(148_402, within(200.0));
    assertThat(end.turningAwayNmPerRad()).isCloseTo(148_402, within(200.0));
  }

  @Test
  void withoutAnyPushStiffnessIsAskedForAtAThousandthOfTheLimit() {
    HoldingEnd idle = end(hold(Seat.BED), across(0, 0), 0, null);
    assertThat(idle.turningTowardNmPerRad()).isCloseTo(148_402, within(1500.0));
    assertThat(idle.turningAwayNmPerRad()).isCloseTo(148_402, within(1500.0));
  }

  @Test
  void aWireAtTheFixedJawLeavesTheMovableFaceOrNothing() {
    Hold wired = hold(Seat.BED, line(JawSide.FIXED, .0075));
    assertThat(end(wired, across(5, 5), 0, null).turningTowardNmPerRad())
        .isCloseTo(67_726, within(20.0));
    assertThat(end(wired, across(5, 5), 0, .0075).turningAwayNmPerRad()).isZero();
  }

  /**
   * Whole faces kept to their middle third: lever 5 mm, N 5/(60 + 5) = 1538.46 N toward and N 5/(60
   * + 10) = 1428.57 N away; tipping itself at N 15/60 = 5000 N and N 15/75 = 4000 N.
   */
  @Test
  void aGapBeginsLongBeforeTheStockTips() {
    HoldingEnd end = end(hold(Seat.BED), across(0, 0), 0, null);
    assertThat(end.noGapTowardN()).isCloseTo(1538.46, within(.01));
    assertThat(end.noGapAwayN()).isCloseTo(1428.57, within(.01));
    assertThat(end.limitTowardN()).isCloseTo(5000, within(1e-6));
    assertThat(end.limitAwayN()).isCloseTo(4000, within(1e-6));
  }

  /** A fifth of the push lost from the clamping force: N 15/(60 + 0.2 15) = 4761.9 N. */
  @Test
  void thePartOfAPushThatTheMovableJawLosesLowersTheLimit() {
    assertThat(end(hold(Seat.BED), across(0, 0), .2, null).limitTowardN())
        .isCloseTo(4761.905, within(.01));
  }

  /**
   * On a wire 7.5 mm deep at the fixed jaw a push of 1 kN brings the movable jaw's resultant to (21
   * 000 7.5 + 60 000)/20 000 = 10.875 mm, 4.125 from the lower edge: 12.375 mm bear, 2 N/(12.375
   * 120) = 26.936 MPa. Away it is 4.125 mm from the upper edge. 100 N leave all of it.
   */
  @Test
  void againstAWireAtTheFixedJawTheMovableFaceAloneTakesTheMoment() {
    Hold wired = hold(Seat.BED, line(JawSide.FIXED, .0075));
    assertThat(end(wired, across(1000, 0), 0, null).facePressurePa())
        .isCloseTo(26.936e6, within(1e3));
    assertThat(end(wired, across(0, 1000), 0, null).facePressurePa())
        .isCloseTo(26.936e6, within(1e3));
    assertThat(end(wired, across(100, 0), 0, null).facePressurePa())
        .isCloseTo(22.222e6, within(1e3));
    assertThat(end(wired, across(3000, 0), 0, null).facePressurePa()).isInfinite();
    assertThat(end(wired, across(100, 0), 0, null).contactHeightM()).isZero();
  }

  /**
   * A push of 1 kN away on a wire in the middle: (20 000 7.5 + 60 000)/19 000 = 11.053 mm, 3.947
   * from the lower edge: three times that bears, 2 19 000/(11.842 120) = 26.74 MPa.
   */
  @Test
  void aPushAwayLeavesTheLowerPartOfTheFixedFaceInContact() {
    Hold wired = hold(Seat.BED, line(JawSide.MOVABLE, .0075));
    HoldingEnd end = end(wired, across(0, 1000), 0, .0075);
    assertThat(end.contactHeightM()).isCloseTo(.011842, within(1e-6));
    assertThat(end.facePressurePa()).isCloseTo(26.741e6, within(1e3));
  }

  @Test
  void bedAndParallelsAreASeatAndNothingElseIs() {
    for (Seat seat : Seat.values()) {
      boolean seated = seat == Seat.BED || seat == Seat.PARALLELS;
      assertThat(end(hold(seat), across(0, 0), 0, null).grip().seated()).isEqualTo(seated);
    }
  }

  @Test
  void aStopAtBothEndsTakesAPushEitherWay() {
    for (Stop stop : Stop.values()) {
      Hold hold = hold(Seat.BED).but().stop(stop).held();
      var grip = end(hold, across(0, 0), 0, null).grip();
      assertThat(grip.stopPlusX()).isEqualTo(stop == Stop.PLUS_X || stop == Stop.BOTH);
      assertThat(grip.stopMinusX()).isEqualTo(stop == Stop.MINUS_X || stop == Stop.BOTH);
    }
  }
}
