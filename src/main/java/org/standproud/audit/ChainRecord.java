package org.standproud.audit;

import java.time.Instant;
import java.util.UUID;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.NotCanonical;

/** Anything that is kept in the chain. */
public sealed interface ChainRecord
    permits AuditRecord, Acceptance, Withdrawal, Withholding, LogEntry {

  /** Its id, never given before. */
  UUID id();

  /** When it was made, to the microsecond. */
  Instant time();

  /** It as one text, which is what is stored and chained: canonical JSON. */
  CanonicalJson body();

  /**
   * Reads a record of any type back.
   *
   * @param body what {@link #body()} wrote
   * @throws NotCanonical when the text is no record
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
