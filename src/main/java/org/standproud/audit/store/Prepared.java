package org.standproud.audit.store;

import java.util.List;
import org.standproud.audit.Acceptance;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.ChainRecord;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * A record made ready in its caller's thread, so that the one writer only seals and inserts.
 *
 * @param record the record
 * @param columns what its row repeats of it
 * @param body its text
 * @param findings what its rows of findings say
 * @param taken the records whose texts go in the same transaction
 * @param alongside what else is written in the same transaction
 */
record Prepared(
    ChainRecord record,
    Columns columns,
    CanonicalJson body,
    List<RecordedFinding> findings,
    List<Masked> taken,
    Alongside alongside) {

  /** What an acceptance leaves among the findings, so that it can be found and counted by card. */
  static final String ACCEPTED = "accepted";

  /**
   * A record of which something is taken.
   *
   * @param sequence its place
   * @param digest SHA-256 of the text that was sealed
   * @param left what is left of it
   */
  record Masked(long sequence, String digest, ChainRecord left) {}

  static Prepared of(ChainRecord record) {
    return of(record, List.of(), Alongside.NOTHING);
  }

  static Prepared of(ChainRecord record, List<Masked> taken, Alongside alongside) {
    return new Prepared(
        record, Columns.of(record), record.body(), findings(record), taken, alongside);
  }

  static List<RecordedFinding> findings(ChainRecord record) {
    if (record instanceof AuditRecord answer) {
      return answer.findings();
    } else if (record instanceof Acceptance given) {
      return List.of(new RecordedFinding(given.card(), given.severity(), ACCEPTED));
    }
    return List.of();
  }
}
