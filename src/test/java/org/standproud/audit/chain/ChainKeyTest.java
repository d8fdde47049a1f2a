package org.standproud.audit.chain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.audit.canonical.CanonicalJson;

class ChainKeyTest {

  private static final String TEXT =
      Base64.getEncoder().encodeToString("0123456789abcdef0123456789abcdef".getBytes());
  private static final CanonicalJson BODY = CanonicalJson.parse("{\"a\":1}");

  private @TempDir Path directory;

  // Computed apart from this program with Python 3: hmac over label, zero byte, place, previous
  // seal and SHA-256 of the body. It keeps old chains provable: the layout may never change.
  @Test
  void theSealOfAKnownRecordIsTheOneComputedByAnotherProgram() {
    Link link = ChainKey.of(TEXT).seal(1, ChainKey.GENESIS, BODY);

    assertThat(link.seal())
        .isEqualTo("a6a0cb64bb14642a16e90f1185acf01f69dfbeb0c88820b46d739a4203cc0705");
  }

  @Test
  void aKeyIsMadeOnTheFirstStartAndReadOnTheNext() throws IOException {
    ChainKeyFile file = new ChainKeyFile(directory.resolve("data/chain.key"));
    ChainKey first = file.open();

    assertThat(file.open().id()).isEqualTo(first.id());
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file.path())))
        .isEqualTo("rw-------");
    try (var beside = Files.list(directory.resolve("data"))) {
      assertThat(beside).containsExactly(file.path());
    }
  }

  @Test
  void aKeyThatOthersMayReadIsRefused() throws IOException {
    ChainKeyFile file = new ChainKeyFile(directory.resolve("chain.key"));
    file.open();
    Files.setPosixFilePermissions(file.path(), PosixFilePermissions.fromString("rw-r-----"));

    assertThatThrownBy(file::open)
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("owner only");
  }

  @Test
  void aShortKeyIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ChainKey.of("c2hvcnQ="))
        .withMessageContaining("32");
  }

  @Test
  void aKeyNeverPrintsItself() {
    ChainKey key = ChainKey.of(TEXT);

    assertThat(key.toString()).isEqualTo("ChainKey " + key.id()).doesNotContain(TEXT);
  }

  @Test
  void aSealIsNoSignatureEvenOverTheSameBytes() {
    ChainKey key = ChainKey.of(TEXT);
    Link link = key.seal(1, ChainKey.GENESIS, BODY);
    Checkpoint passedOff = new Checkpoint(1, link.seal(), Instant.EPOCH, key.id(), link.seal());

    assertThat(key.signed(passedOff)).isFalse();
    assertThat(key.signed(key.sign(1, link.seal(), Instant.EPOCH))).isTrue();
  }

  @Test
  void aCheckpointLineCutShortByACrashIsReplacedByTheNext() throws IOException {
    ChainKey key = ChainKey.of(TEXT);
    CheckpointFile file = new CheckpointFile(directory.resolve("checkpoints.ndjson"));
    file.append(key.sign(1, ChainKey.GENESIS, Instant.EPOCH));
    List<String> whole = file.lines();
    Files.writeString(file.path(), "{\"sequence\":2," + " ".repeat(500), StandardOpenOption.APPEND);

    assertThat(file.lines()).isEqualTo(whole);
    file.append(key.sign(3, ChainKey.GENESIS, Instant.EPOCH));
    assertThat(file.lines()).hasSize(2).first().isEqualTo(whole.get(0));
    assertThat(file.lines().get(1)).contains("\"sequence\":3").endsWith("}");
  }
}
