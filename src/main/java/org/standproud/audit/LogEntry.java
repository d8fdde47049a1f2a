package org.standproud.audit;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * The digest of an entry of a log outside the chain, such as a publication of rule cards, so that a
 * change of the log is detected.
 *
 * @param id its id
 * @param time time of the entry
 * @param log the log
 * @param place position in the log, from 1; a restarted log begins with 1 again
 * @param digest SHA-256 over the canonical text of the entry, in hexadecimal
 */
public record LogEntry(UUID id, Instant time, String log, long place, String digest)
    implements ChainRecord {

  /** Refuses an entry without a log. */
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
