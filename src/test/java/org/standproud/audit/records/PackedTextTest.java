package org.standproud.audit.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Test;
import org.standproud.IntegrationTest;
import org.standproud.api.RunningService;
import org.standproud.audit.canonical.CanonicalJson;
import tools.jackson.databind.json.JsonMapper;

@IntegrationTest
class PackedTextTest {

  private static final CanonicalJson TEXT = setups();

  @Test
  void whatIsPackedUnpacks() {
    assertThat(PackedText.text(PackedText.of(TEXT))).isEqualTo(TEXT.text());
    assertThat(PackedText.text(PackedText.of(new CanonicalJson("\"\u00e9\u20ac\""))))
        .isEqualTo("\"é€\"");
  }

  @Test
  void aTextOfMuchTheSameTakesAFractionOfItsBytes() {
    assertThat(PackedText.of(TEXT).length).isLessThan(TEXT.utf8().length / 4);
  }

  /** RFC 8878 section 3.1.1: a frame begins with the number FD2FB528, lowest byte first. */
  @Test
  void itIsAFrameOfZstandard() {
    assertThat(Arrays.copyOf(PackedText.of(TEXT), 4)).containsExactly(0x28, 0xB5, 0x2F, 0xFD);
  }

  /** Packed by the library of the platform, as records were before. */
  @Test
  void recordsOfBeforeUnpack() throws IOException {
    ByteArrayOutputStream before = new ByteArrayOutputStream();
    try (DeflaterOutputStream zlib = new DeflaterOutputStream(before)) {
      zlib.write(TEXT.utf8());
    }
    assertThat(PackedText.text(before.toByteArray())).isEqualTo(TEXT.text());
  }

  @Test
  void whatIsCutAnywhereDoesNotUnpack() {
    byte[] whole = PackedText.of(TEXT);
    for (int bytes = 0; bytes < whole.length; bytes += 1 + bytes / 16) {
      assertThat(PackedText.text(Arrays.copyOf(whole, bytes)))
          .as("%d of %d bytes", bytes, whole.length)
          .isEqualTo(PackedText.UNREADABLE);
    }
  }

  /** What it unpacks to is judged by its seal; it must only come to an end. */
  @Test
  void whatIsDamagedThrowsNothing() {
    byte[] whole = PackedText.of(TEXT);
    for (int at = 0; at < whole.length; at++) {
      byte[] damaged = whole.clone();
      damaged[at] ^= 0x10;
      assertThatCode(() -> PackedText.text(damaged)).doesNotThrowAnyException();
    }
  }

  private static CanonicalJson setups() {
    return CanonicalJson.of(
        JsonMapper.shared()
            .valueToTree(
                RunningService.seedFiles().stream().map(JsonMapper.shared()::readTree).toList()));
  }
}
