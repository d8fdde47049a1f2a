package org.standproud.mechanics.holding.jaw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Backing;
import org.standproud.setup.BackingKind;
import org.standproud.setup.Band;
import org.standproud.setup.ClampScrew;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;

/** Statics of a no-tension joint under an eccentric force; the kern of a rectangle is b/6. */
class JawSpanTest {

  @ParameterizedTest(name = "{0} mm of stock, {1} mm beside the screw of 150 mm jaws")
  @CsvSource({
    // length, along, shared, ratio, bearing
    "60, 0, 60, 0, 60",
    "60, 10, 60, 1, 60",
    "60, 20, 60, 2, 30",
    "60, 25, 60, 2.5, 15",
    "100, 50, 75, 3, 3.75",
    "200, 0, 150, 0, 150",
  })
  void aJawBearsOnTheWholeStockOnlyWithinItsMiddleThird(
      double lengthMm, double alongMm, double sharedMm, double ratio, double bearingMm) {
    JawSpan span = JawSpan.of(alongMm / 1e3, lengthMm / 1e3, 0.15);
    assertThat(span.sharedM()).isCloseTo(sharedMm / 1e3, within(1e-9));
    assertThat(span.rackingRatio()).isCloseTo(ratio, within(1e-9));
    assertThat(span.bearingM()).isCloseTo(bearingMm / 1e3, within(1e-9));
  }

  /** Balance of the movable jaw: pressure that falls to nothing at the far end is centred on it. */
  @Test
  void theResultantOfWhatBearsLiesAtTheScrew() {
    JawSpan span = JawSpan.of(0.02, 0.06, 0.15);
    double nearEndM = 0.02 - 0.03;
    double resultantM = nearEndM + span.bearingM() / 3;
    assertThat(resultantM).isCloseTo(0, within(1e-12));
  }

  @Test
  void stockPushedToEitherSideRacksAlike() {
    assertThat(JawSpan.of(-0.02, 0.06, 0.15)).isEqualTo(JawSpan.of(0.02, 0.06, 0.15));
  }

  @Test
  void longStockOffTheMiddleOverhangsAtOneEndAndIsHeldEvenlyForLess() {
    JawSpan span = JawSpan.of(0.02, 0.2, 0.15);
    assertThat(span.overhangM()).isCloseTo(0.045, within(1e-9));
    assertThat(span.evenlyHeldM(0.2)).isCloseTo(0.11, within(1e-9));
  }

  @Test
  void stockBesideTheJawsIsRefused() {
    assertThatThrownBy(() -> JawSpan.of(0.2, 0.06, 0.15)).isInstanceOf(OutsideValidity.class);
  }

  /** By hand: 300 mm of stock in 150 mm jaws leaves 75 mm; a block up to 10 mm from the end, 10. */
  @Test
  void theEndThatTheCutterLeavesIsFreeBeyondTheJawsOrABlock() {
    assertThat(JawSpan.exitOverhangM(hold(null), 0.3, 1)).isCloseTo(0.075, within(1e-9));
    assertThat(JawSpan.exitOverhangM(hold(0.02), 0.3, 1)).isCloseTo(0.095, within(1e-9));
    assertThat(JawSpan.exitOverhangM(hold(0.02), 0.3, -1)).isCloseTo(0.055, within(1e-9));
    Hold backed = hold(null).but().backing(List.of(block(0.125))).held();
    assertThat(JawSpan.exitOverhangM(backed, 0.3, 1)).isCloseTo(0.01, within(1e-9));
    assertThat(JawSpan.exitOverhangM(backed, 0.3, -1)).isCloseTo(0.075, within(1e-9));
  }

  private static Backing block(double alongM) {
    return new Backing(BackingKind.BLOCK, JawSide.FIXED, alongM, 0.03, 0.04, null, null, null);
  }

  /** Jaws 150 mm wide. */
  private static Hold hold(@Nullable Double alongM) {
    Band friction = new Band(0.08, 0.12, 0.15);
    Vise vise =
        ViseBuilder.builder()
            .name("150 mm vise")
            .jawWidthM(0.15)
            .jawHeightM(0.04)
            .greatestOpeningM(0.1)
            .bedHeightM(0.07)
            .screw(new ClampScrew(0.018, 0.004, Math.toRadians(15), friction, 0.028, friction))
            .greatestClampingForceN(30_000)
            .jawSurface(JawSurface.GROUND)
            .fixedJawStiffnessNPerM(Band.exactly(4e8))
            .movableJawStiffnessNPerM(Band.exactly(1e8))
            .movableJawLiftRad(Band.exactly(0))
            .build();
    return Hold.in(vise, 0.02).along(alongM).held();
  }
}
