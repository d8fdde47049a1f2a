package org.standproud.audit.records;

import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;

/**
 * A stored record with its position in the chain.
 *
 * @param stored position and seal
 * @param record the whole record, or the rest of it
 * @param whole whether nothing of it was withheld
 */
public record StoredRecord(Stored stored, AuditRecord record, boolean whole) {

  /** Whether only its summary is left. */
  public boolean gone() {
    return !whole && record.account().equals(Mask.NO_ACCOUNT);
  }
}
