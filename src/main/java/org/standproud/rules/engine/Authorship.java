package org.standproud.rules.engine;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Who published a rule base, why, when and after which revision.
 *
 * @param author the author
 * @param note the reason, in one sentence
 * @param time time of publication
 * @param parent the revision before it, or null for the first
 */
public record Authorship(String author, String note, Instant time, @Nullable String parent) {}
