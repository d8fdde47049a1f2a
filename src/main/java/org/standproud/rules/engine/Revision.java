package org.standproud.rules.engine;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * The identity of a rule base.
 *
 * @param id SHA-256 over content, author, note, time and parent, in hexadecimal
 * @param contentHash SHA-256 over the canonical content of all cards, in hexadecimal
 * @param author its publisher
 * @param note the reason
 * @param time time of publication
 * @param parent the revision before it, or null for the first
 */
public record Revision(
    String id,
    String contentHash,
    String author,
    String note,
    Instant time,
    @Nullable String parent) {}
