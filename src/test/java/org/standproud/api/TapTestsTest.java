package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.IntegrationTest;
import org.standproud.web.browser.TapSound;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Recordings written by the platform's own sound library, of taps whose note is known. */
@IntegrationTest
class TapTestsTest {

  private static final double HZ = TapSound.HZ;
  private static final double ZETA = TapSound.ZETA;
  private static final String TAPS = "/v1/tap-tests";

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
    HttpResponse<String> found =
        post(TAPS, TapSound.wav(TapSound.taps(rate, HZ), rate, bits, channels), "audio/wav");
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
    HttpResponse<String> refused = post(TAPS, TapSound.wav(noise, 44_100, 16, 1), "audio/wav");
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
    byte[] whole = TapSound.wav(TapSound.taps(44_100, HZ), 44_100, 16, 1);
    HttpResponse<String> cut = post(TAPS, Arrays.copyOf(whole, 60), "audio/wav");
    assertThat(cut.statusCode()).isEqualTo(422);
    assertThat(post(TAPS, whole, "text/plain").statusCode()).isEqualTo(415);
    assertThat(post(TAPS, new byte[3 << 20], "audio/wav").statusCode()).isEqualTo(413);
  }

  @Test
  void aRangeThatTheRecordingCannotShowIsRefused() {
    byte[] slow = TapSound.wav(TapSound.taps(8000, HZ), 8000, 16, 1);
    HttpResponse<String> beyond = post(TAPS + "?highest=5000", slow, "audio/wav");
    assertThat(beyond.statusCode()).isEqualTo(400);
    assertThat(beyond.body()).contains("highest").contains("3600 Hz");
    HttpResponse<String> turned = post(TAPS + "?lowest=900&highest=800", slow, "audio/wav");
    assertThat(turned.statusCode()).isEqualTo(400);
    assertThat(turned.body()).contains("lowest");
  }
}
