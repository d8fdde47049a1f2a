package org.standproud.audit.chain;

/**
 * One place where the chain is not as it was written.
 *
 * @param kind what was done to it
 * @param first first place concerned
 * @param last last place concerned, the same as {@code first} for a single record
 * @param explanation one sentence for the auditor
 */
public record ChainFault(Kind kind, long first, long last, String explanation) {

  /** What was done to the chain. */
  public enum Kind {
    /** A record, its seal or what it is indexed by was changed. */
    EDITED,
    /** Records are gone from the middle or the beginning. */
    DELETED,
    /** A record stands in another place than it was written in. */
    REORDERED,
    /** A record stands there that was not written there. */
    INSERTED,
    /** Records are gone from the end. */
    TRUNCATED,
    /** The chain was cut and continued differently with the same key. */
    REWRITTEN,
    /** A line or record cannot be read at all. */
    UNREADABLE,
    /** The text of a record is gone, and no record states who removed it. */
    WITHHELD_SILENTLY,
    /** A checkpoint was not signed with the key that it names. */
    CHECKPOINT_FORGED,
    /** A checkpoint was signed with a key that was not given. */
    CHECKPOINT_OF_OTHER_KEY,
    /** No given checkpoint covers these records. */
    UNPROVED,
    /** Another key sealed this chain; nothing can be checked. */
    WRONG_KEY
  }
}
