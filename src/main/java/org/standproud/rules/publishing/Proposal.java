package org.standproud.rules.publishing;

import java.time.Instant;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Cards somebody proposes to put into service.
 *
 * @param id its id
 * @param proposer who proposes them
 * @param note why, in one sentence
 * @param time when
 * @param onto the revision they were written against, or null if there was none
 * @param files the text of each file by its path
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
