package org.standproud.api.rulebase;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.publishing.StoredRevision;

/**
 * A summary line of a revision.
 *
 * @param number its number, from 1
 * @param id its id, a hash over its cards, author, note, time and parent
 * @param contentHash hash of the content of its cards; equal for revisions with equal content
 * @param author its author
 * @param publisher its publisher
 * @param note the reason
 * @param time time of publication
 * @param parent the revision before it
 * @param self link to its cards
 */
record RevisionLine(
    long number,
    String id,
    String contentHash,
    String author,
    String publisher,
    String note,
    Instant time,
    @Nullable String parent,
    String self) {

  static RevisionLine of(StoredRevision stored) {
    return new RevisionLine(
        stored.number(),
        stored.id(),
        stored.revision().contentHash(),
        stored.revision().author(),
        stored.publisher(),
        stored.revision().note(),
        stored.revision().time(),
        stored.revision().parent(),
        "/v1/rule-base/revisions/" + stored.id());
  }
}
