package org.standproud.rules.desk;

import java.time.Instant;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.engine.Authorship;

/**
 * A revision as it is kept.
 *
 * @param number its place in the log, from 1
 * @param id the id of the revision, see {@link org.standproud.rules.engine.Revision}
 * @param contentHash hash of what its cards say
 * @param author who wrote it
 * @param publisher who put it into service
 * @param note why, in one sentence
 * @param time when it was put into service
 * @param parent the revision before it, or null for the first
 * @param files the hash of the text of each file by its path
 */
public record StoredRevision(
    long number,
    String id,
    String contentHash,
    String author,
    String publisher,
    String note,
    Instant time,
    @Nullable String parent,
    Map<String, String> files) {

  /** Copies the files. */
  public StoredRevision {
    files = Collections.unmodifiableMap(new TreeMap<>(files));
  }

  Authorship authorship() {
    return new Authorship(author, note, time, parent);
  }
}
