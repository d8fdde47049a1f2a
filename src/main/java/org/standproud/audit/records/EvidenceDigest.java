package org.standproud.audit.records;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.AuditRecord;

/**
 * A digest of an answer, short enough to read by the hundred thousand. It is stored beside the
 * record, computed from it alone, and deleted with its payload.
 */
public interface EvidenceDigest {

  /** Stores no digests, and knows none. */
  EvidenceDigest NOTHING =
      new EvidenceDigest() {
        @Override
        public byte @Nullable [] of(AuditRecord record) {
          return null;
        }

        @Override
        public boolean agree(byte[] kept, AuditRecord record) {
          return true;
        }
      };

  /**
   * Computes the digest of a record.
   *
   * @param record the whole record, or the rest of it
   * @return null if there is none
   */
  byte @Nullable [] of(AuditRecord record);

  /**
   * Whether this program can read a stored digest; others are computed again.
   *
   * @param kept the stored digest
   */
  default boolean reads(byte[] kept) {
    return true;
  }

  /**
   * Whether a stored digest is that of the record.
   *
   * @param kept the stored digest
   * @param record its record
   */
  default boolean agree(byte[] kept, AuditRecord record) {
    return Arrays.equals(kept, of(record));
  }
}
