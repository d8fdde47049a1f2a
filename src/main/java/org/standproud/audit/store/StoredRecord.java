package org.standproud.audit.store;

import org.standproud.audit.AuditRecord;

/**
 * A record as it was kept, with its place in the chain.
 *
 * @param stored place and seal
 * @param record the whole record
 */
public record StoredRecord(Stored stored, AuditRecord record) {}
