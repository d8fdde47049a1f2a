package org.standproud.mechanics.taptest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.taptest.TapRecording.Note;
import org.standproud.mechanics.taptest.TapRecording.Reason;
import org.standproud.mechanics.taptest.TapRecording.Unclear;

/** Taps made up with noise, other modes and a blow, of which note and damping are known. */
class TapRecordingTest {

  private static final double RATE = 48000;

  @Test
  void oneModeInNoiseIsFoundWithItsDamping() {
    Random random = new Random(11);
    for (int i = 0; i < 60; i++) {
      double hz = 150 + 2500 * random.nextDouble();
      double zeta = Math.pow(10, -2.7 + 1.4 * random.nextDouble());
      double[] signal = noise(random, 3, 0.01);
      for (double at : new double[] {0.2, 1.1, 2.0}) {
        tap(signal, at, hz, zeta, 1);
      }
      Note note = (Note) new TapRecording(signal, RATE).note(100, 5000);
      assertThat(note.frequencyHz())
          .as("%.0f Hz %.4f", hz, zeta)
          .isCloseTo(hz, Percentage.withPercentage(0.5));
      assertThat(note.dampingRatio())
          .as("%.0f Hz %.4f", hz, zeta)
          .isCloseTo(zeta, Percentage.withPercentage(10));
      assertThat(note.taps()).isEqualTo(3);
    }
  }

  @Test
  void weakerModesAboveDoNotDisturbTheNote() {
    Random random = new Random(12);
    for (int i = 0; i < 20; i++) {
      double hz = 300 + 700 * random.nextDouble();
      double[] signal = noise(random, 2, 0.01);
      for (double at : new double[] {0.1, 1}) {
        tap(signal, at, hz, 0.01, 1);
        tap(signal, at, 2.4 * hz, 0.01, 0.4);
        tap(signal, at, 6.1 * hz, 0.01, 0.3);
      }
      Note note = (Note) new TapRecording(signal, RATE).note(100, 8000);
      assertThat(note.frequencyHz()).isCloseTo(hz, Percentage.withPercentage(0.5));
      assertThat(note.dampingRatio()).isCloseTo(0.01, Percentage.withPercentage(10));
    }
  }

  @Test
  void theMeanStandsWithinItsError() {
    Random random = new Random(13);
    double[] signal = noise(random, 4, 0.03);
    for (int tap = 0; tap < 5; tap++) {
      tap(signal, 0.1 + 0.75 * tap, 612, 0.02, 1);
    }
    Note note = (Note) new TapRecording(signal, RATE).note(100, 5000);
    assertThat(Math.abs(note.frequencyHz() - 612)).isLessThan(3 * note.frequencyErrorHz());
    assertThat(Math.abs(note.dampingRatio() - 0.02)).isLessThan(3 * note.dampingError());
  }

  @Test
  void noiseAloneHoldsNoTap() {
    assertThat(new TapRecording(noise(new Random(14), 2, 1), RATE).note(100, 5000))
        .isEqualTo(new Unclear(Reason.NO_TAP));
  }

  @Test
  void aHumThatDoesNotDieAwayIsNoDecay() {
    double[] signal = new double[(int) (2 * RATE)];
    for (int i = 5000; i < signal.length; i++) {
      signal[i] = Math.sin(2 * Math.PI * 400 * i / RATE);
    }
    assertThat(new TapRecording(signal, RATE).note(100, 5000)).isInstanceOf(Unclear.class);
  }

  @Test
  void aThudIsNoDecay() {
    double[] signal = noise(new Random(15), 2, 0.01);
    tap(signal, 0.5, 300, 0.4, 1);
    assertThat(new TapRecording(signal, RATE).note(100, 5000))
        .isEqualTo(new Unclear(Reason.NO_CLEAR_DECAY));
  }

  @Test
  void tapsOfDifferentPartsAreNoMeasurement() {
    double[] signal = noise(new Random(16), 2, 0.01);
    tap(signal, 0.1, 500, 0.01, 1);
    tap(signal, 1, 700, 0.01, 1);
    assertThat(new TapRecording(signal, RATE).note(100, 5000))
        .isEqualTo(new Unclear(Reason.TAPS_DISAGREE));
  }

  @Test
  void aRangeBeyondTheSamplingRateIsRefused() {
    TapRecording recording = new TapRecording(new double[1000], 8000);
    assertThatThrownBy(() -> recording.note(100, 4000))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("highest frequency is 4000.0 Hz");
    assertThatThrownBy(() -> new TapRecording(new double[10], 8000))
        .isInstanceOf(OutsideValidity.class);
  }

  private static double[] noise(Random random, double seconds, double size) {
    double[] signal = new double[(int) (seconds * RATE)];
    for (int i = 0; i < signal.length; i++) {
      signal[i] = size * random.nextGaussian();
    }
    return signal;
  }

  private static void tap(double[] signal, double atS, double hz, double zeta, double size) {
    double omega = 2 * Math.PI * hz;
    double damped = omega * Math.sqrt(1 - zeta * zeta);
    for (int i = (int) (atS * RATE); i < signal.length; i++) {
      double t = (i - atS * RATE) / RATE;
      signal[i] += size * Math.exp(-zeta * omega * t) * Math.sin(damped * t);
    }
  }
}
