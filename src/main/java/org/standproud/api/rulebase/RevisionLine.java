package org.standproud.api.rulebase;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.publishing.StoredRevision;

/**
 * A revision in short.
 *
 * @param number its place in the order of revisions, from 1
 * @param id its id
 * @param contentHash hash of what its cards say; two revisions that say the same have the same
 * @param author who wrote it
 * @param publisher who put it into service
 * @param note why
 * @param time when
 * @param parent the revision before it
 * @param self where to find its cards
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
