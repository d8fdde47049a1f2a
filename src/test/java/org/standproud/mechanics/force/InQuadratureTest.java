package org.standproud.mechanics.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.standproud.setup.Band;

class InQuadratureTest {

  /** Two reaches of 30 % and 40 % on a logarithmic scale are 50 % together: 3-4-5. [derived] */
  @Test
  void twoReachesAddLikeTheSidesOfARightTriangle() {
    Band three = new Band(Math.exp(-0.3), 1, Math.exp(0.3));
    Band four = new Band(Math.exp(-0.4), 1, Math.exp(0.4));
    Band five = InQuadrature.product(three, four);
    assertThat(five.high()).isCloseTo(Math.exp(0.5), within(1e-12));
    assertThat(five.low()).isCloseTo(Math.exp(-0.5), within(1e-12));
  }

  @Test
  void oneFactorAloneKeepsItsBand() {
    Band one = InQuadrature.product(new Band(0.8, 1.1, 1.3), Band.exactly(2));
    assertThat(one.low()).isCloseTo(1.6, within(1e-12));
    assertThat(one.likely()).isCloseTo(2.2, within(1e-12));
    assertThat(one.high()).isCloseTo(2.6, within(1e-12));
  }

  @Test
  void aFactorThatMayBeZeroIsRefused() {
    assertThatThrownBy(() -> InQuadrature.product(new Band(0, 1, 2)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property
  void togetherTheyReachFartherThanAnyAloneAndLessThanAllAtTheirWorst(
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double a,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double b) {
    Band one = new Band(1 - a, 1, 1 + a);
    Band two = new Band(1 - b, 1, 1 + b);
    Band both = InQuadrature.product(one, two);
    assertThat(both.high()).isBetween(1 + Math.max(a, b), (1 + a) * (1 + b));
    assertThat(both.low()).isBetween((1 - a) * (1 - b), 1 - Math.max(a, b));
  }
}
