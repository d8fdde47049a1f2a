package org.standproud.rules.engine;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Who publishes a rule base, why, when and after which.
 *
 * @param author who
 * @param note why, in one sentence
 * @param time when
 * @param parent the revision before it, or null for the first
 */
public record Authorship(String author, String note, Instant time, @Nullable String parent) {}
