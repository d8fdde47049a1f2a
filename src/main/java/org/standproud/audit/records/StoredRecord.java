package org.standproud.audit.records;

import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;

/**
 * A record as it was kept, with its place in the chain.
 *
 * @param stored place and seal
 * @param record the whole record, or what is left of it
 * @param whole whether nothing of it was withheld
 */
public record StoredRecord(Stored stored, AuditRecord record, boolean whole) {

  /** Whether nothing is left but its summary. */
  public boolean gone() {
    return !whole && record.account().equals(Mask.NO_ACCOUNT);
  }
}
