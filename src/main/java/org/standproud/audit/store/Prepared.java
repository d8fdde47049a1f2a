package org.standproud.audit.store;

import java.util.List;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.canonical.CanonicalJson;

/** A record made ready in its caller's thread, so that the one writer only seals and inserts. */
record Prepared(Columns columns, CanonicalJson body, List<RecordedFinding> findings) {

  static Prepared of(AuditRecord record) {
    return new Prepared(Columns.of(record), record.body(), record.findings());
  }
}
