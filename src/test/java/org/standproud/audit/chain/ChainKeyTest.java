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
  private static final String OLD_SIGNATURE =
      "6670568fd6eb5286006bff0db02a06c5c711d17e2cefd263d0e1b1e36d2a362b";
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
    Checkpoint passedOff =
        new Checkpoint(1, link.seal(), null, Instant.EPOCH, null, key.id(), link.seal());

    assertThat(key.signed(passedOff)).isFalse();
  }

  // Computed apart from this program with Python 3: hmac over label, zero byte, place, seal, time
  // and key id on a line each. Files of the first version hold such statements.
  @Test
  void aCheckpointOfTheFirstVersionIsStillRead() {
    ChainKey key = ChainKey.of(TEXT);
    String seal = "a6a0cb64bb14642a16e90f1185acf01f69dfbeb0c88820b46d739a4203cc0705";
    Checkpoint first = new Checkpoint(1, seal, null, Instant.EPOCH, null, key.id(), OLD_SIGNATURE);

    assertThat(key.signed(first)).isTrue();
    assertThat(
            key.signed(new Checkpoint(2, seal, null, Instant.EPOCH, null, key.id(), OLD_SIGNATURE)))
        .isFalse();
  }

  @Test
  void aCheckpointIsProvedByThePublicHalfAlone() {
    SigningKey signing = SigningKey.of(SigningKey.fresh());
    VerifyingKey open = VerifyingKey.of(signing.verifying().pem());
    Checkpoint stated = signing.sign(1, ChainKey.GENESIS, ChainDigest.START, "k", Instant.EPOCH);

    assertThat(open.id()).isEqualTo(signing.verifying().id());
    assertThat(open.signed(stated)).isTrue();
    assertThat(SigningKey.of(SigningKey.fresh()).verifying().signed(stated)).isFalse();
    for (Checkpoint changed :
        List.of(
            new Checkpoint(
                2,
                stated.seal(),
                stated.digest(),
                stated.time(),
                "k",
                stated.keyId(),
                stated.signature()),
            new Checkpoint(
                1,
                stated.seal(),
                "11".repeat(32),
                stated.time(),
                "k",
                stated.keyId(),
                stated.signature()),
            new Checkpoint(
                1,
                stated.seal(),
                stated.digest(),
                stated.time(),
                "other",
                stated.keyId(),
                stated.signature()))) {
      assertThat(open.signed(changed)).as("%s", changed).isFalse();
    }
  }

  @Test
  void theSigningKeyIsItsOwnersAndItsPublicHalfLiesBesideIt() throws IOException {
    SigningKeyFile file = new SigningKeyFile(directory.resolve("checkpoint.key"));
    SigningKey first = file.open();

    assertThat(file.open().verifying().id()).isEqualTo(first.verifying().id());
    assertThat(VerifyingKey.read(file.publicPath()).id()).isEqualTo(first.verifying().id());
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file.path())))
        .isEqualTo("rw-------");
    assertThat(first.toString()).doesNotContain(Files.readAllLines(file.path()).get(0));
  }

  @Test
  void halvesOfTwoSigningKeysAreRefused() {
    String mixed = SigningKey.fresh().split("\\s")[0] + " " + SigningKey.fresh().split("\\s")[1];

    assertThatIllegalArgumentException()
        .isThrownBy(() -> SigningKey.of(mixed))
        .withMessageContaining("belong together");
    assertThatIllegalArgumentException().isThrownBy(() -> VerifyingKey.of("c2hvcnQ="));
  }

  @Test
  void aCheckpointLineCutShortByACrashIsReplacedByTheNext() throws IOException {
    SigningKey key = SigningKey.of(SigningKey.fresh());
    CheckpointFile file = new CheckpointFile(directory.resolve("checkpoints.ndjson"));
    file.append(key.sign(1, ChainKey.GENESIS, ChainDigest.START, "k", Instant.EPOCH));
    List<String> whole = file.lines();
    Files.writeString(file.path(), "{\"sequence\":2," + " ".repeat(500), StandardOpenOption.APPEND);

    assertThat(file.lines()).isEqualTo(whole);
    file.append(key.sign(3, ChainKey.GENESIS, ChainDigest.START, "k", Instant.EPOCH));
    assertThat(file.lines()).hasSize(2).first().isEqualTo(whole.get(0));
    assertThat(file.lines().get(1)).contains("\"sequence\":3").endsWith("}");
  }
}
