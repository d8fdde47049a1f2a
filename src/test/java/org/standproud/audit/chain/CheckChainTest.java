package org.standproud.audit.chain;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.audit.SampleRecords;

class CheckChainTest {

  private final ByteArrayOutputStream said = new ByteArrayOutputStream();
  private @TempDir Path directory;
  private Path export;
  private Path key;
  private Path checkpoints;

  @BeforeEach
  void exportTwoRecords() throws IOException {
    key = directory.resolve("chain.key");
    export = directory.resolve("export.ndjson");
    checkpoints = directory.resolve("checkpoints.ndjson");
    ChainKey secret = new ChainKeyFile(key).open();
    Link first = secret.seal(1, ChainKey.GENESIS, SampleRecords.passed(Instant.EPOCH).body());
    Link second = secret.seal(2, first.seal(), SampleRecords.passed(Instant.EPOCH).body());
    Checkpoint end = secret.sign(2, second.seal(), Instant.EPOCH);
    new CheckpointFile(checkpoints).append(end);
    Files.write(
        export, List.of(ChainExport.line(first), ChainExport.line(second), ChainExport.line(end)));
  }

  @Test
  void aWholeChainEndsWithZero() {
    assertThat(check(export, key, checkpoints)).isZero();
    assertThat(said.toString(StandardCharsets.UTF_8)).contains("2 record(s)", "whole");
  }

  @Test
  void aBrokenChainEndsWithOneAndNamesThePlace() throws IOException {
    String text = Files.readString(export).replaceFirst("\"run\"", "\"ran\"");
    Files.writeString(export, text);

    assertThat(check(export, key, checkpoints)).isEqualTo(1);
    assertThat(said.toString(StandardCharsets.UTF_8)).contains("EDITED at 1", "BROKEN");
  }

  @Test
  void aMissingFileOrKeyEndsWithTwoAndMakesNoNewKey() {
    Path nowhere = directory.resolve("nowhere.key");

    assertThat(check(export, nowhere)).isEqualTo(2);
    assertThat(nowhere).doesNotExist();
    assertThat(check(export)).isEqualTo(2);
    assertThat(check(export, export)).isEqualTo(2);
  }

  private int check(Path... files) {
    List<String> arguments = java.util.Arrays.stream(files).map(Path::toString).toList();
    return CheckChain.check(arguments, new PrintStream(said, true, StandardCharsets.UTF_8));
  }
}
