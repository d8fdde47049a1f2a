package org.standproud.mechanics.holding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeakestWayTest {

  @ParameterizedTest
  @CsvSource({
    "1.2, 3, 4, 5, SLIDE",
    "3, 1.2, 4, 5, LIFT",
    "3, 4, 1.2, 5, TIP_TOWARD_FIXED",
    "3, 4, 5, 1.2, TIP_TOWARD_MOVABLE"
  })
  void itGoesTheWayThatHasTheLeastMarginOfItsOwn(
      double slip, double lift, double toward, double away, WeakestWay way) {
    assertThat(WeakestWay.of(new DrawnHold.Margins(1, slip, lift, toward, away))).isEqualTo(way);
  }
}
