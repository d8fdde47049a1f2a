package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.Random;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Recordings written by the platform's own sound library, of taps whose note is known. */
@IntegrationTest
class TapTestsTest {

  private static final double HZ = 612;
  private static final double ZETA = 0.02;
  private static final String TAPS = "/v1/tap-tests";

  /** Three taps a second apart in a little noise, from -1 to 1. */
  private static double[] taps(double rate, double hz) {
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

  private static byte[] wav(double[] signal, float rate, int bits, int channels) {
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
      throw new AssertionError(e);
    }
    return file.toByteArray();
  }

  private static HttpResponse<String> post(String path, byte[] body, String type) {
    RunningService service = RunningService.shared();
    return service
        .caller()
        .send(
            service
                .caller()
                .to(path)
                .header("Content-Type", type)
                .POST(BodyPublishers.ofByteArray(body)));
  }

  @ParameterizedTest
  @CsvSource({"44100, 16, 1", "48000, 24, 2", "22050, 8, 1", "96000, 32, 1"})
  void noteAndDampingComeBackAsASetUpTakesThem(float rate, int bits, int channels) {
    HttpResponse<String> found = post(TAPS, wav(taps(rate, HZ), rate, bits, channels), "audio/wav");
    assertThat(found.statusCode()).as(found.body()).isEqualTo(200);
    JsonNode report = RunningService.json(found);
    assertThat(report.at("/measuredNote/low").asDouble()).isBetween(0.99 * HZ, HZ);
    assertThat(report.at("/measuredNote/high").asDouble()).isBetween(HZ, 1.01 * HZ);
    assertThat(report.at("/measuredDamping/low").asDouble()).isBetween(0.7 * ZETA, ZETA);
    assertThat(report.at("/measuredDamping/high").asDouble()).isBetween(ZETA, 1.3 * ZETA);
    assertThat(report.get("taps").asInt()).isEqualTo(3);
    ObjectNode setup = RunningService.seed("08");
    ObjectNode hold = (ObjectNode) setup.get("hold");
    hold.set("measuredNote", report.get("measuredNote"));
    hold.set("measuredDamping", report.get("measuredDamping"));
    HttpResponse<String> judged = RunningService.shared().assess(setup);
    assertThat(judged.statusCode()).as(judged.body()).isEqualTo(201);
  }

  @Test
  void aRecordingWithoutATapIsRefusedAndSaysWhatToDo() {
    double[] noise = new Random(6).doubles(88_200, -0.3, 0.3).toArray();
    HttpResponse<String> refused = post(TAPS, wav(noise, 44_100, 16, 1), "audio/wav");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("/problems/recording-refused")
        .contains("Hold the microphone near the plate");
  }

  @Test
  void whatIsNoRecordingIsRefusedForWhatItIs() {
    HttpResponse<String> text = post(TAPS, "no sound at all".getBytes(), "audio/wav");
    assertThat(text.statusCode()).isEqualTo(422);
    assertThat(text.body()).contains("A WAV file is wanted");
    byte[] whole = wav(taps(44_100, HZ), 44_100, 16, 1);
    HttpResponse<String> cut = post(TAPS, Arrays.copyOf(whole, 60), "audio/wav");
    assertThat(cut.statusCode()).isEqualTo(422);
    assertThat(post(TAPS, whole, "text/plain").statusCode()).isEqualTo(415);
    assertThat(post(TAPS, new byte[3 << 20], "audio/wav").statusCode()).isEqualTo(413);
  }

  @Test
  void aRangeThatTheRecordingCannotShowIsRefused() {
    byte[] slow = wav(taps(8000, HZ), 8000, 16, 1);
    HttpResponse<String> beyond = post(TAPS + "?highest=5000", slow, "audio/wav");
    assertThat(beyond.statusCode()).isEqualTo(400);
    assertThat(beyond.body()).contains("highest").contains("3600 Hz");
    HttpResponse<String> turned = post(TAPS + "?lowest=900&highest=800", slow, "audio/wav");
    assertThat(turned.statusCode()).isEqualTo(400);
    assertThat(turned.body()).contains("lowest");
  }
}
