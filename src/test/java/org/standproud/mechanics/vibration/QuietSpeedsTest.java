package org.standproud.mechanics.vibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.mechanics.OutsideValidity;

class QuietSpeedsTest {

  private static final double NATURAL_HZ = 400;
  private static final int TEETH = 4;

  /** Magnification 1/|1 - r^2|: Den Hartog, Mechanical Vibrations, 1956, from memory. */
  @ParameterizedTest
  @ValueSource(doubles = {10, 26, 33, 34, 49, 51, 70, 99, 101, 130, 149})
  void atTheSpeedsNamedNoLowHarmonicIsMagnifiedThreeTimes(double speedRevPerS) {
    QuietSpeeds quiet = QuietSpeeds.around(NATURAL_HZ, TEETH, speedRevPerS);
    for (double speed : new double[] {quiet.slowerRevPerS(), quiet.fasterRevPerS()}) {
      if (speed == speedRevPerS) {
        continue; // set below or above all of them, and left as it is
      }
      for (int harmonic = 1; harmonic <= 4; harmonic++) {
        double ratio = harmonic * TEETH * speed / NATURAL_HZ;
        assertThat(1 / Math.abs(1 - ratio * ratio)).as("harmonic " + harmonic).isLessThan(3);
      }
    }
  }

  @Test
  void fromTheThirdHarmonicTheSlowerSpeedDoesNotLandOnTheFourth() {
    QuietSpeeds quiet = QuietSpeeds.around(NATURAL_HZ, TEETH, 100.0 / 3);
    assertThat(quiet.slowerRevPerS()).isCloseTo(20, Offset.offset(1e-9));
    assertThat(quiet.fasterRevPerS()).isCloseTo(40, Offset.offset(1e-9));
  }

  @Test
  void inStepWithTheFirstHarmonicOneGoesDownByAThirdOrUpByAHalf() {
    QuietSpeeds quiet = QuietSpeeds.around(NATURAL_HZ, TEETH, 100);
    assertThat(quiet.slowerRevPerS()).isCloseTo(100 / 1.5, Offset.offset(1e-9));
    assertThat(quiet.fasterRevPerS()).isCloseTo(150, Offset.offset(1e-9));
  }

  @Test
  void aSpeedOutsideThemAllStaysAsItIs() {
    assertThat(QuietSpeeds.around(NATURAL_HZ, TEETH, 200).fasterRevPerS()).isEqualTo(200);
    assertThat(QuietSpeeds.around(NATURAL_HZ, TEETH, 5).slowerRevPerS()).isEqualTo(5);
  }

  @Test
  void aStockThatDoesNotSwingHasNoQuietSpeeds() {
    assertThatThrownBy(() -> QuietSpeeds.around(0, TEETH, 50)).isInstanceOf(OutsideValidity.class);
  }
}
