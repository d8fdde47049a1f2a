package org.standproud.rules.publishing;

import java.time.Instant;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Cards proposed for service.
 *
 * @param id its id
 * @param proposer its author
 * @param note the reason, in one sentence
 * @param time time of the proposal
 * @param onto the revision it is based on, or null if there was none
 * @param files the text of each file by path
 */
public record Proposal(
    String id,
    String proposer,
    String note,
    Instant time,
    @Nullable String onto,
    Map<String, String> files) {

  /** Copies the files. */
  public Proposal {
    files = Collections.unmodifiableMap(new TreeMap<>(files));
  }
}
