package org.standproud.audit.records;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.AuditRecord;

/**
 * The numbers of an answer, short enough to be read by the hundred thousand. They lie beside the
 * record, are made from it and from nothing else, and go when its account goes.
 */
public interface EvidenceDigest {

  /** Nothing is kept in short, and of what others kept nothing is known. */
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
   * The numbers of a record.
   *
   * @param record the whole record, or what is left of it
   * @return null if none are left, or none are wanted
   */
  byte @Nullable [] of(AuditRecord record);

  /**
   * Whether this program reads numbers that were kept; those it does not are made anew.
   *
   * @param kept what was kept
   */
  default boolean reads(byte[] kept) {
    return true;
  }

  /**
   * Whether numbers that were kept are those of the record.
   *
   * @param kept what was kept
   * @param record the record it was kept for
   */
  default boolean agree(byte[] kept, AuditRecord record) {
    return Arrays.equals(kept, of(record));
  }
}
