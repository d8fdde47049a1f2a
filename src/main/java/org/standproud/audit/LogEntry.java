package org.standproud.audit;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * An entry of a log that lies beside the records, such as a publication of rule cards: its digest
 * in the chain, so that a change of the log is found.
 *
 * @param id its id
 * @param time when the entry was made
 * @param log the log
 * @param place place in the log, from 1; a log that begins anew begins with 1 again
 * @param digest SHA-256 over the canonical text of the entry, in hexadecimal
 */
public record LogEntry(UUID id, Instant time, String log, long place, String digest)
    implements ChainRecord {

  /** Refuses an entry that names no log. */
  public LogEntry {
    time = time.truncatedTo(ChronoUnit.MICROS);
    Words.text("log", log);
    Words.text("digest", digest);
  }

  @Override
  public CanonicalJson body() {
    return RecordType.LOG_ENTRY.write(this);
  }
}
