package org.standproud.audit.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.audit.chain.CheckpointFile;
import org.standproud.audit.chain.KeyPlaces;

class CheckpointsTest {

  private static final String SEAL = "00".repeat(32);

  @TempDir Path directory;

  /** Whatever a database driver throws: the records are stored, and the next call states them. */
  @Test
  void afterAnyExceptionTheEndIsStatedAtTheNextCall() {
    KeyPlaces keys = new KeyPlaces(directory);
    CheckpointFile file = new CheckpointFile(directory.resolve("checkpoints.ndjson"));
    AtomicReference<Supplier<RecordTables.Head>> head =
        new AtomicReference<>(() -> new RecordTables.Head(null, 0, SEAL, SEAL));
    try (Checkpoints checkpoints =
        new Checkpoints(
            () -> head.get().get(),
            new ChainKeys(keys.chain().open(), keys.signing().open()),
            file,
            Clock.systemUTC())) {
      head.set(
          () -> {
            throw new IllegalStateException("closed");
          });
      assertThatCode(checkpoints::stateEnd).doesNotThrowAnyException();
      assertThatCode(() -> checkpoints.moved(5_000)).doesNotThrowAnyException();
      assertThat(file.lines()).isEmpty();

      head.set(() -> new RecordTables.Head(null, 7, SEAL, SEAL));
      checkpoints.stateEnd();
      assertThat(file.lines()).hasSize(1);
    }
  }
}
