package org.standproud.audit.chain;

/**
 * A place where the chain differs from what was written.
 *
 * @param kind the kind of change
 * @param first first position affected
 * @param last last position affected
 * @param explanation one sentence for the auditor
 */
public record ChainFault(Kind kind, long first, long last, String explanation) {

  /** The kind of change. */
  public enum Kind {
    /** A record, its seal or its index columns were changed. */
    EDITED,
    /** Records are missing in the middle or at the beginning. */
    DELETED,
    /** A record is in another position than it was written in. */
    REORDERED,
    /** A record was inserted. */
    INSERTED,
    /** Records are missing at the end. */
    TRUNCATED,
    /** The chain was cut and continued differently with the same key. */
    REWRITTEN,
    /** A line or record cannot be read at all. */
    UNREADABLE,
    /** The text of a record is missing, and no record states who removed it. */
    WITHHELD_SILENTLY,
    /** A checkpoint was not signed with the key that it names. */
    CHECKPOINT_FORGED,
    /** A checkpoint was signed with an unknown key. */
    CHECKPOINT_OF_OTHER_KEY,
    /** No given checkpoint covers these records. */
    UNPROVED,
    /** Another key sealed this chain; nothing can be checked. */
    WRONG_KEY
  }
}
