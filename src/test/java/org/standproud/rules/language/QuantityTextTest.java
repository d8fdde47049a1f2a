package org.standproud.rules.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.setup.units.Dimension;

class QuantityTextTest {

  private final QuantityText units = new QuantityText();

  /** Exact definitions: 25.4 mm to the inch; 4.4482216152605 N to the pound-force [memory]. */
  @ParameterizedTest
  @CsvSource({
    "12 mm, 0.012, LENGTH",
    "0.5 in, 0.0127, LENGTH",
    "-3 um, -3e-6, LENGTH",
    "18 kN, 18000, FORCE",
    "1 lbf, 4.4482216152605, FORCE",
    "25 %, 0.25, NUMBER",
    "2, 2, NUMBER",
    "1.5e3 N, 1500, FORCE",
    "90 deg, 1.5707963267948966, ANGLE"
  })
  void aQuantityInACardMeansWhatItWouldMeanInARequest(String text, double si, Dimension dimension) {
    Quantity quantity = units.read(text);
    assertThat(quantity.dimension()).isEqualTo(dimension);
    assertThat(quantity.si()).isCloseTo(si, Offset.offset(Math.abs(si) * 1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "mm", "12 furlong", "1 2 mm", "1,5 mm", "1e999 mm", "0x10", "NaN"})
  void whatIsNoQuantityIsRefusedWithAReason(String text) {
    assertThatThrownBy(() -> units.read(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageMatching(".+(such as 12 mm|is not a unit here|too large).*");
  }

  @Test
  void anUnknownUnitIsRefusedWithTheUnitsThereAre() {
    assertThatThrownBy(() -> units.read("3 cubits")).hasMessageContaining("mm, um, in");
  }
}
