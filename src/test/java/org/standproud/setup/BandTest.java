package org.standproud.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class BandTest {

  @Test
  void aBandOutOfOrderIsRefused() {
    assertThatThrownBy(() -> new Band(2, 1, 3)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Band(1, Double.NaN, 3))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Band.exactly(Double.POSITIVE_INFINITY))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aDivisorThatMayBeZeroIsRefused() {
    assertThatThrownBy(() -> Band.exactly(1).over(Band.between(-1, 1)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property
  void aProductHoldsEveryProductOfValuesInside(
      @ForAll @DoubleRange(min = -10, max = 10) double a,
      @ForAll @DoubleRange(min = 0, max = 5) double wa,
      @ForAll @DoubleRange(min = -10, max = 10) double b,
      @ForAll @DoubleRange(min = 0, max = 5) double wb,
      @ForAll @DoubleRange(min = 0, max = 1) double s,
      @ForAll @DoubleRange(min = 0, max = 1) double t) {
    Band product = Band.between(a, a + wa).times(Band.between(b, b + wb));
    double inside = (a + s * wa) * (b + t * wb);
    assertThat(inside).isBetween(product.low() - 1e-9, product.high() + 1e-9);
  }
}
