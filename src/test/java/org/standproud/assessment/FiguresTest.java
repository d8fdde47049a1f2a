package org.standproud.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.audit.canonical.CanonicalJson;
import tools.jackson.databind.node.DoubleNode;

class FiguresTest {

  /** The platform's decimal arithmetic is the reference. */
  @Test
  void sevenFiguresAreThoseOfDecimalArithmeticToHalfAUnitOfTheLast() {
    Random random = new Random(7);
    for (int i = 0; i < 200_000; i++) {
      double number =
          (random.nextBoolean() ? 1 : -1)
              * random.nextDouble()
              * Math.pow(10, random.nextInt(60) - 30);
      BigDecimal exact = new BigDecimal(number).round(new MathContext(7));
      double rounded = Figures.of(number);
      assertThat(shortest(rounded).precision()).isLessThanOrEqualTo(7);
      BigDecimal unit = exact.ulp();
      assertThat(new BigDecimal(rounded).subtract(new BigDecimal(number)).abs())
          .isLessThanOrEqualTo(unit.multiply(new BigDecimal("0.500001")));
    }
  }

  /** RFC 8785 writes the shortest decimal of a double. */
  private static BigDecimal shortest(double number) {
    return new BigDecimal(CanonicalJson.of(DoubleNode.valueOf(number)).text()).stripTrailingZeros();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -1, 0.1, 0.25, 9_999_999, 1e7, 1e-7, 2.5e22, 1e300, 4.9e-324})
  void whatHasSevenFiguresStaysAsItIs(double number) {
    assertThat(Figures.of(number)).isEqualTo(number);
  }

  @Test
  void theNextPowerOfTenIsReachedByRounding() {
    assertThat(Figures.of(9.99999996)).isEqualTo(10);
    assertThat(Figures.of(-0.0)).isEqualTo(0);
    assertThat(Figures.of(Math.PI)).isEqualTo(3.141593);
  }
}
