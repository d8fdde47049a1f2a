package org.standproud.mechanics.holding.other;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.setup.Band;

class ClampedHoldsTest {

  private static final Band EACH = Band.exactly(8000);
  private static final Band MU = Band.exactly(0.15);

  private static HoldingLoad load(double x, double y, double z, double h) {
    return new HoldingLoad(
        Band.exactly(Math.min(x, 0)),
        Band.exactly(Math.max(x, 0)),
        Band.exactly(Math.min(y, 0)),
        Band.exactly(Math.max(y, 0)),
        Band.exactly(Math.min(z, 0)),
        Band.exactly(Math.max(z, 0)),
        h,
        0,
        0);
  }

  @Test
  @DisplayName("Nut factor 0.20 (Shigley, from memory); strap as a lever, derived from statics")
  void aStrapPassesOnItsBoltsForceAsALever() {
    StrapClamp clamp = StrapClamp.tightened(Band.exactly(48), 0.012, 0.06, 0.03);
    assertThat(clamp.forceN().likely()).isCloseTo(20_000 * 2.0 / 3, within(1e-6));
    assertThat(clamp.assumptions()).isEmpty();
    assertThat(StrapClamp.tightened(null, 0.012, 0.06, 0.03).assumptions()).hasSize(1);
  }

  @Test
  void anAnglePlateBacksThePushTowardItUpToItsTopEdge() {
    BackedHold hold =
        new BackedHold(BackedHold.Backing.ANGLE_PLATE, 2, EACH, MU, 0.02, 0.06, 0.12, 0.01, true);
    ClampedMargins toward = hold.under(load(0, 800, 0, 0.01));
    assertThat(toward.tipMarginTowardSupport().likely())
        .isCloseTo(16_000 * 0.02 / 0.01 / 800, within(1e-9));
    ClampedMargins away = hold.under(load(0, -800, 0, 0.01));
    assertThat(away.tipMarginAway().likely()).isCloseTo(16_000 * 0.04 / 0.07 / 800, within(1e-9));
    assertThat(hold.under(load(1200, 0, 0, 0.01)).slipMargin().likely())
        .isCloseTo(0.15 * 16_000 / 1200, within(1e-9));
  }

  @Test
  void theSideOfAViseIsTrustedLessThanAnAnglePlate() {
    HoldingLoad load = load(300, 800, 100, 0.01);
    ClampedMargins plate =
        new BackedHold(BackedHold.Backing.ANGLE_PLATE, 2, EACH, MU, 0.03, 0.06, 0.12, 0.01, true)
            .under(load);
    ClampedMargins side =
        new BackedHold(BackedHold.Backing.VISE_SIDE, 2, EACH, MU, 0.03, 0.06, 0.12, 0.01, true)
            .under(load);
    assertThat(side.combinedMargin().low()).isLessThan(plate.combinedMargin().low());
    assertThat(side.combinedMargin().high()).isEqualTo(plate.combinedMargin().high());
  }

  @Test
  void strapsOnTheTableHoldByFrictionAndTheirOwnPressure() {
    TableHold hold = new TableHold(2, EACH, MU, 0.1, 0.03, 0.05);
    ClampedMargins sideways = hold.under(load(0, 800, 0, 0.01));
    assertThat(sideways.slipMargin().low()).isCloseTo(0.15 * 16_000 / 800, within(1e-9));
    assertThat(sideways.slipMargin().high()).isCloseTo(2 * 0.15 * 16_000 / 800, within(1e-9));
    assertThat(sideways.tipMarginTowardSupport().likely())
        .isCloseTo(16_000 * 0.03 / (800 * 0.01), within(1e-9));
    assertThat(hold.under(load(0, 0, 1600, 0.01)).liftMargin().likely())
        .isCloseTo(10, within(1e-9));
    assertThat(hold.under(load(0, 800, 800, 0.01)).combinedMargin().likely())
        .isLessThan(sideways.combinedMargin().likely());
  }

  @Test
  void aPushTheOtherWayIsJudgedAtTheOtherEdge() {
    TableHold hold = new TableHold(2, EACH, MU, 0.1, 0.03, 0.05);
    assertThat(hold.under(load(0, -800, 0, 0.01)).tipMarginAway().likely())
        .isCloseTo(16_000 * 0.05 / (800 * 0.01), within(1e-9));
  }

  @Test
  void knownLimitsAreRefused() {
    assertThatThrownBy(() -> new TableHold(1, EACH, MU, 0.1, 0.03, 0.05))
        .isInstanceOf(OutsideValidity.class);
    assertThatThrownBy(
            () ->
                new BackedHold(
                    BackedHold.Backing.ANGLE_PLATE, 2, EACH, MU, 0.07, 0.06, 0.12, 0.01, true))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("depth of the clamps");
    assertThatThrownBy(() -> StrapClamp.tightened(Band.exactly(0), 0.012, 0.06, 0.03))
        .isInstanceOf(OutsideValidity.class);
  }

  private static HoldingLoad offTheMiddle(double x, double y, double z, double h, double placeM) {
    return new HoldingLoad(
        Band.exactly(0),
        Band.exactly(x),
        Band.exactly(Math.min(y, 0)),
        Band.exactly(Math.max(y, 0)),
        Band.exactly(0),
        Band.exactly(z),
        h,
        placeM,
        0);
  }

  /**
   * Worked by hand: 600 and 800 N are 1000 N; they twist with 600 40 + 800 40 mm = 56 N m, 1120 N
   * at half a span of 50 mm; 400 N of lift take 0.15 of themselves: 2180 N. The table face holds
   * 2400 N, half and all of the strap faces 1200 and 2400 N more.
   */
  @Test
  void twistAndLiftTakeFromWhatTheStrapsHold() {
    TableHold hold = new TableHold(2, EACH, MU, 0.1, 0.03, 0.05);
    Band combined = hold.under(offTheMiddle(600, 800, 400, 0.01, 0.04)).combinedMargin();
    assertThat(combined.low()).isCloseTo(2400 / 2180.0, within(1e-9));
    assertThat(combined.likely()).isCloseTo(3600 / 2180.0, within(1e-9));
    assertThat(combined.high()).isCloseTo(4800 / 2180.0, within(1e-9));
    Band slip = hold.under(offTheMiddle(600, 800, 400, 0.01, 0.04)).slipMargin();
    assertThat(slip.likely()).isCloseTo(3.6, within(1e-9));
  }

  /** Worked by hand: 16 000 N at 40 mm are 640 N m against 10 N at 500 mm and 2000 N at 40 mm. */
  @Test
  void liftHelpsAPushToTipStockOffTheTableEitherWay() {
    TableHold hold = new TableHold(2, EACH, Band.exactly(0.5), 0.1, 0.04, 0.04);
    for (double push : new double[] {10, -10}) {
      assertThat(hold.under(offTheMiddle(0, push, 2000, 0.5, 0)).combinedMargin().likely())
          .isCloseTo(640 / 85.0, within(1e-9));
    }
  }

  /** Two straps of 600 kN are more than the 1 MN that anything here is meant for. */
  @Test
  void theStrapsTogetherMayNotPressHarderThanAMeganewton() {
    Band hard = Band.exactly(600e3);
    assertThatThrownBy(() -> new TableHold(2, hard, MU, 0.1, 0.03, 0.05))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("force of a clamp");
    assertThatThrownBy(
            () ->
                new BackedHold(
                    BackedHold.Backing.ANGLE_PLATE, 2, hard, MU, 0.02, 0.06, 0.12, 0.01, true))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("force of a clamp");
  }

  /** Stock backed by a plate holds by one face: 0.15 16 000 N against 1200 N upward. */
  @Test
  void backedStockIsLiftedAgainstTheFrictionOfItsClamps() {
    BackedHold hold =
        new BackedHold(BackedHold.Backing.ANGLE_PLATE, 2, EACH, MU, 0.02, 0.06, 0.12, 0.01, true);
    assertThat(hold.under(load(0, 0, 1200, 0.01)).liftMargin().likely()).isCloseTo(2, within(1e-9));
  }

  /**
   * Worked by hand: a fence of 1000 N leaves 600 of 1600 N to the straps, which hold 2400 N at
   * worst: the factor m with 1600 m - 1000 = 2400 is 2.125. Away from it 2400/1600 = 1.5 stays.
   */
  @Test
  void aFenceTakesAPushTowardItAndNoneAwayFromIt() {
    TableHold hold =
        new TableHold(2, EACH, MU, 0.1, 0.04, 0.04, Band.exactly(1000), Band.exactly(0));
    assertThat(hold.under(load(0, 1600, 0, 0.01)).slipMargin().low())
        .isCloseTo(2.125, within(1e-9));
    assertThat(hold.under(load(0, -1600, 0, 0.01)).slipMargin().low()).isCloseTo(1.5, within(1e-9));
  }

  /** 500 N of stop against 900 N along: 900 m - 500 = 2400 gives m = 3.2222. */
  @Test
  void aStopTakesAPushAlongTheTableEitherWay() {
    TableHold hold =
        new TableHold(2, EACH, MU, 0.1, 0.04, 0.04, Band.exactly(0), Band.exactly(500));
    for (double push : new double[] {900, -900}) {
      assertThat(hold.under(load(push, 0, 0, 0.01)).slipMargin().low())
          .isCloseTo(2900.0 / 900, within(1e-9));
    }
  }

  /** Neither a fence nor a stop keeps the stock from tipping or from lifting off. */
  @Test
  void aFenceHelpsNeitherAgainstTipNorAgainstLift() {
    TableHold bare = new TableHold(2, EACH, MU, 0.1, 0.01, 0.01);
    TableHold fenced =
        new TableHold(2, EACH, MU, 0.1, 0.01, 0.01, Band.exactly(5000), Band.exactly(5000));
    HoldingLoad load = load(0, 800, 900, 0.3);
    assertThat(fenced.under(load).tipMarginTowardSupport())
        .isEqualTo(bare.under(load).tipMarginTowardSupport());
    assertThat(fenced.under(load).liftMargin()).isEqualTo(bare.under(load).liftMargin());
  }

  /** Two M12 bolts of 16.7 kN and friction 0.15 hold 5 kN: 2 0.15 16 667 N. */
  @Test
  void aFenceHoldsWhatItsBoltsRubFor() {
    assertThat(TableHold.bolted(2, Band.exactly(40 / (0.2 * 0.012)), MU).likely())
        .isCloseTo(5000, within(1e-9));
  }

  /**
   * By hand: 8000 N on 900 mm2 are 8.889 MPa or 90.64 kgf/cm2; c = 0.6 closes by 5.712 um, slope 2
   * p over that 3.112e12 Pa/m, along the face 0.15 of it: 8.4e8 N/m for two feet, half of that
   * through two joints: 4.2e8 N/m again, on which 1.5 kg ring at 2665 Hz.
   */
  @Test
  void stockUnderStrapsRingsOnTheJointsBelowThem() {
    LyingStock stock = new LyingStock(2, LyingStock.FOOT_M2, 1.5);
    double spring = stock.stiffnessNPerM(16_000, 0.6, 0.15);
    double closedM = 0.6e-6 * Math.sqrt(8000 / 9e-4 / 98066.5);
    double slope = 2 * 8000 / 9e-4 / closedM;
    assertThat(spring).isCloseTo(0.15 * slope * 2 * 9e-4 / 2, within(1e-3 * spring));
    assertThat(spring).isBetween(4.1e8, 4.3e8);
    assertThat(stock.naturalHz(spring)).isCloseTo(2665, within(25.0));
  }

  /**
   * A rigid bar on a turning spring at its middle: I = m h^2/12, from any book on dynamics; with a
   * point at the end the stiffness there is T over the square of half of h.
   */
  @Test
  void aBackedBlockRocksLikeARigidBar() {
    BackedBlock bar = new BackedBlock(1.2, 0.06, 1e-3, 0.06, 0);
    double turn = 50e3;
    assertThat(bar.rockingHz(turn))
        .isCloseTo(
            Math.sqrt(turn / (1.2 * (0.06 * 0.06 + 1e-6) / 12)) / (2 * Math.PI), within(1e-6));
    assertThat(bar.rockingNPerM(turn)).isCloseTo(turn / (0.03 * 0.03), within(1e-3));
    assertThat(bar.giveMPerN(1e8, turn)).isCloseTo(1e-8 + 0.0009 / turn, within(1e-15));
  }

  /** The longer what is free, the more it gives and the lower it rings. */
  @Test
  void lessBackingGivesMore() {
    BackedBlock low = new BackedBlock(1.2, 0.07, 0.02, 0.055, 0.015);
    BackedBlock high = new BackedBlock(1.2, 0.07, 0.02, 0.065, 0.005);
    assertThat(low.giveMPerN(1e8, 50e3)).isGreaterThan(high.giveMPerN(1e8, 50e3));
    assertThat(low.rockingHz(50e3)).isLessThan(high.rockingHz(50e3));
    assertThatThrownBy(() -> new BackedBlock(1.2, 0.07, 0.02, 0.03, 0.02))
        .isInstanceOf(OutsideValidity.class);
  }
}
