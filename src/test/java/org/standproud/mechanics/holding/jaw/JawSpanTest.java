package org.standproud.mechanics.holding.jaw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.OutsideValidity;

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
}
