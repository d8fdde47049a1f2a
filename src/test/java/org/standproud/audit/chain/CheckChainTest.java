package org.standproud.audit.chain;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.audit.SampleRecords;
import picocli.CommandLine;

class CheckChainTest {

  private final StringWriter said = new StringWriter();
  private @TempDir Path directory;
  private Path export;
  private Path key;
  private Path publicKey;
  private Path checkpoints;

  @BeforeEach
  void exportTwoRecords() throws IOException {
    key = directory.resolve("chain.key");
    export = directory.resolve("export.ndjson");
    checkpoints = directory.resolve("checkpoints.ndjson");
    ChainKey secret = new ChainKeyFile(key).open();
    Link first = secret.seal(1, ChainKey.GENESIS, SampleRecords.passed(Instant.EPOCH).body());
    Link second = secret.seal(2, first.seal(), SampleRecords.passed(Instant.EPOCH).body());
    SigningKeyFile signing = new SigningKeyFile(directory.resolve("checkpoint.key"));
    publicKey = signing.publicPath();
    String digest = ChainDigest.after(ChainDigest.after(ChainDigest.START, first), second);
    Checkpoint end = signing.open().sign(2, second.seal(), digest, secret.id(), Instant.EPOCH);
    new CheckpointFile(checkpoints).append(end);
    Files.write(
        export, List.of(ChainExport.line(first), ChainExport.line(second), ChainExport.line(end)));
  }

  @Test
  void anIntactChainExitsWithZeroWithThePublicKeyAlone() {
    assertThat(check(publicly())).isZero();
    assertThat(said.toString()).contains("2 intact record(s)", "the chain is intact");
    assertThat(check(withChainKey(key))).isZero();
  }

  @Test
  void aBrokenChainEndsWithOneAndNamesThePlace() throws IOException {
    String text = Files.readString(export).replaceFirst("\"run\"", "\"ran\"");
    Files.writeString(export, text);

    assertThat(check(publicly())).isEqualTo(1);
    assertThat(said.toString()).contains("EDITED at 1 to 2", "BROKEN");
    assertThat(check(withChainKey(key))).isEqualTo(1);
    assertThat(said.toString()).contains("EDITED at 1 to 1");
  }

  @Test
  void aMissingFileOrKeyEndsWithTwoAndMakesNoNewKey() {
    Path nowhere = directory.resolve("nowhere.key");

    assertThat(check(withChainKey(nowhere))).isEqualTo(2);
    assertThat(nowhere).doesNotExist();
    assertThat(check(List.of(export.toString()))).isEqualTo(2);
    assertThat(check(withChainKey(export))).isEqualTo(2);
    assertThat(check(List.of(export.toString(), "--public-key", export.toString()))).isEqualTo(2);
  }

  private List<String> publicly() {
    return List.of(
        export.toString(),
        "--public-key",
        publicKey.toString(),
        "--checkpoints",
        checkpoints.toString());
  }

  private List<String> withChainKey(Path file) {
    List<String> arguments = new ArrayList<>(publicly());
    arguments.addAll(List.of("--chain-key", file.toString()));
    return arguments;
  }

  private int check(List<String> arguments) {
    CommandLine command = new CommandLine(new CheckChain());
    command.setOut(new PrintWriter(said)).setErr(new PrintWriter(said));
    return command.execute(arguments.toArray(String[]::new));
  }
}
