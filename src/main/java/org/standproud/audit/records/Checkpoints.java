package org.standproud.audit.records;

import java.time.Clock;
import java.util.List;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.chain.Checkpoint;
import org.standproud.audit.chain.CheckpointFile;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes the end of the chain outside the database: after every thousand records, and on request,
 * which is every minute. Only committed records are stated, and never fewer than before.
 */
final class Checkpoints implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(Checkpoints.class);
  private static final long EVERY = 1_000;

  private final Supplier<RecordTables.Head> head;
  private final ChainKeys seal;
  private final CheckpointFile file;
  private final Clock clock;
  private long stated;

  Checkpoints(Supplier<RecordTables.Head> head, ChainKeys seal, CheckpointFile file, Clock clock) {
    this.head = head;
    this.seal = seal;
    this.file = file;
    this.clock = clock;
    this.stated = lastStated(file.lines());
    long end = head.get().sequence();
    if (end < stated) {
      throw new IllegalStateException(
          "The database ends at record "
              + end
              + " but "
              + file.path()
              + " states that there were "
              + stated
              + "; records are missing, or these two do not belong together");
    }
  }

  synchronized void moved(long sequence) {
    if (sequence - stated >= EVERY) {
      stateEnd();
    }
  }

  synchronized void stateEnd() {
    try {
      RecordTables.Head end = head.get();
      if (end.sequence() <= stated) {
        return;
      }
      file.append(seal.state(end, clock.instant()));
      stated = end.sequence();
    } catch (RuntimeException e) {
      // The records themselves are safe; the next call writes the statement.
      LOG.error("The end of the chain could not be stated in {}", file.path(), e);
    }
  }

  /** Writes a last statement and stops. */
  @Override
  public void close() {
    stateEnd();
  }

  private long lastStated(List<String> lines) {
    if (lines.isEmpty()) {
      return 0;
    }
    Checkpoint last =
        JsonMapper.shared()
            .treeToValue(CanonicalJson.parse(lines.get(lines.size() - 1)).tree(), Checkpoint.class);
    if (!seal.signed(last)) {
      throw new IllegalStateException(
          "The last line of " + file.path() + " was not signed with the key of this service");
    }
    return last.sequence();
  }
}
