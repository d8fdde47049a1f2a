package org.standproud.rules.engine;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * The identity of a rule base.
 *
 * @param id SHA-256 over content, author, note, time and parent; as in assessments
 * @param contentHash SHA-256 over the content of all cards
 * @param author its publisher
 * @param note the reason
 * @param time time of its newest card
 * @param parent the revision before it
 */
public record Revision(
    String id,
    String contentHash,
    String author,
    String note,
    Instant time,
    @Nullable String parent) {}
