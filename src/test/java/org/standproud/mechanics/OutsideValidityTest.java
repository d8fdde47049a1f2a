package org.standproud.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class OutsideValidityTest {

  @Test
  void bothEndsOfARangeBelongToIt() {
    assertThat(OutsideValidity.within("grip", 1, 1, 2, "mm")).isEqualTo(1);
    assertThat(OutsideValidity.within("grip", 2, 1, 2, "mm")).isEqualTo(2);
    assertThat(OutsideValidity.within("grip", 1.5, 1, 2, "mm")).isEqualTo(1.5);
  }

  @Test
  void whatLiesOutsideIsRefusedByNameValueAndRange() {
    for (double outside : new double[] {Math.nextDown(1.0), Math.nextUp(2.0), Double.NaN}) {
      assertThatThrownBy(() -> OutsideValidity.within("grip", outside, 1, 2, "mm"))
          .isInstanceOf(OutsideValidity.class)
          .hasMessageContaining("grip is ")
          .hasMessageContaining("it must lie between 1.0000 and 2.0000 mm");
    }
  }
}
