package org.standproud.audit;

import java.time.Instant;
import java.util.UUID;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.NotCanonical;

/** A record of the chain, of any type. */
public sealed interface ChainRecord
    permits AuditRecord, Acceptance, Withdrawal, Withholding, LogEntry {

  /** Its unique id. */
  UUID id();

  /** Time of its creation, to the microsecond. */
  Instant time();

  /** Its text, which is stored and chained: canonical JSON. */
  CanonicalJson body();

  /**
   * Reads a record of any type.
   *
   * @param body the text from {@link #body()}
   * @throws NotCanonical if the text is not a record
   */
  static ChainRecord from(CanonicalJson body) {
    return switch (RecordType.of(body)) {
      case ASSESSMENT -> AuditRecord.from(body);
      case ACCEPTANCE -> RecordType.read(body, Acceptance.class);
      case WITHDRAWAL -> RecordType.read(body, Withdrawal.class);
      case WITHHOLDING -> RecordType.read(body, Withholding.class);
      case LOG_ENTRY -> RecordType.read(body, LogEntry.class);
    };
  }
}
