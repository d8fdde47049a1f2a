package org.standproud.web.browser;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;

/** The sound of a tapped plate of which note and damping are known. */
public final class TapSound {

  /** Its note in Hz. */
  public static final double HZ = 612;

  /** Its damping over critical. */
  public static final double ZETA = 0.02;

  /** What the microphone of the browser hears, over and over. */
  static final Path FILE = written();

  private TapSound() {}

  private static Path written() {
    try {
      Path file = Files.createTempFile("taps", ".wav");
      file.toFile().deleteOnExit();
      return Files.write(file, wav(taps(44_100, HZ), 44_100, 16, 1));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Three taps a second apart in a little noise, from -1 to 1. */
  public static double[] taps(double rate, double hz) {
    double[] signal = new double[(int) (3.2 * rate)];
    Random random = new Random(5);
    for (int i = 0; i < signal.length; i++) {
      signal[i] = 0.002 * random.nextGaussian();
    }
    double omega = 2 * Math.PI * hz;
    for (double start : new double[] {0.2, 1.2, 2.2}) {
      for (int i = (int) (start * rate); i < signal.length; i++) {
        double t = i / rate - start;
        signal[i] += 0.8 * Math.exp(-ZETA * omega * t) * Math.sin(omega * t);
      }
    }
    return signal;
  }

  public static byte[] wav(double[] signal, float rate, int bits, int channels) {
    int bytes = bits / 8;
    byte[] data = new byte[signal.length * bytes * channels];
    for (int i = 0; i < signal.length; i++) {
      long value = Math.round(Math.max(-1, Math.min(1, signal[i])) * ((1L << bits - 1) - 1));
      value += bits == 8 ? 128 : 0; // Eight bits are unsigned in a WAV file.
      for (int channel = 0; channel < channels; channel++) {
        for (int b = 0; b < bytes; b++) {
          data[(i * channels + channel) * bytes + b] = (byte) (value >> 8 * b);
        }
      }
    }
    AudioFormat format = new AudioFormat(rate, bits, channels, bits > 8, false);
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try {
      AudioSystem.write(
          new AudioInputStream(new ByteArrayInputStream(data), format, signal.length),
          AudioFileFormat.Type.WAVE,
          file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return file.toByteArray();
  }
}
