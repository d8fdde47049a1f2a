package org.standproud.mechanics.vibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Held to the discrete Fourier transform as it is defined, with the complex numbers of Hipparchus,
 * and to waves whose amplitude is known.
 */
class TurnHarmonicsTest {

  private static final Offset<Double> NEAR = Offset.offset(1e-9);

  @ParameterizedTest
  @ValueSource(
      ints = {3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 15, 16, 96, 97, 98, 100, 480, 720, 721, 722})
  void amplitudesAreThoseOfTheDefinition(int n) {
    Random chance = new Random(n);
    double[] samples = chance.doubles(n, -100, 100).toArray();
    double[] amplitudes = TurnHarmonics.of(samples);
    assertThat(amplitudes).hasSize(TurnHarmonics.upTo(n) + 1);
    for (int k = 0; k < amplitudes.length; k++) {
      Complex sum = Complex.ZERO;
      for (int j = 0; j < n; j++) {
        Complex turned = Complex.valueOf(0, -2 * Math.PI * k * j / n).exp();
        sum = sum.add(turned.multiply(samples[j]));
      }
      assertThat(amplitudes[k])
          .as("%d of %d", k, n)
          .isCloseTo((k == 0 ? 1 : 2) * sum.norm() / n, NEAR);
    }
  }

  @Test
  void aMeanAndTwoWavesComeOutWithTheirAmplitudes() {
    int n = 360;
    double[] samples = new double[n];
    for (int j = 0; j < n; j++) {
      double turn = 2 * Math.PI * j / n;
      samples[j] = -7 + 3 * Math.cos(4 * turn + 0.3) + 2 * Math.sin(9 * turn);
    }
    double[] amplitudes = TurnHarmonics.of(samples);
    assertThat(amplitudes[0]).isCloseTo(7, NEAR);
    assertThat(amplitudes[4]).isCloseTo(3, NEAR);
    assertThat(amplitudes[9]).isCloseTo(2, NEAR);
    assertThat(amplitudes[5]).isCloseTo(0, NEAR);
  }
}
