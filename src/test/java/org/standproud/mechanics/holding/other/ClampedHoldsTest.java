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
}
