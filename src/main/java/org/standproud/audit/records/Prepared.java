package org.standproud.audit.records;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.Acceptance;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.ChainRecord;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.chain.Link;

/**
 * A record prepared in its caller's thread, so that the single writer only seals and inserts.
 *
 * @param record the record
 * @param columns its index columns
 * @param body its text
 * @param packed its compressed text
 * @param findings its rows of findings
 * @param numbers its digest
 * @param taken the records whose texts are removed in the same transaction
 * @param extra further writes in the same transaction
 */
record Prepared(
    ChainRecord record,
    Columns columns,
    CanonicalJson body,
    byte[] packed,
    List<RecordedFinding> findings,
    byte @Nullable [] numbers,
    List<Masked> taken,
    TransactionalWrite extra) {

  /** The finding row of an acceptance, so that it can be found and counted by card. */
  static final String ACCEPTED = "accepted";

  /**
   * A record that loses text.
   *
   * @param sequence its position
   * @param digest SHA-256 of the sealed text
   * @param left the rest of it
   */
  record Masked(long sequence, String digest, ChainRecord left) {}

  /** A record that is in a chain already, with its sealed text. */
  static Prepared of(Link link) {
    return of(
        ChainRecord.from(link.text()), link.text(), null, List.of(), TransactionalWrite.NOTHING);
  }

  /** An answer whose digest is in memory. */
  static Prepared of(AuditRecord record, byte @Nullable [] numbers, TransactionalWrite extra) {
    return of(record, record.body(), numbers, List.of(), extra);
  }

  static Prepared of(ChainRecord record, EvidenceDigest digest, TransactionalWrite extra) {
    byte[] numbers = record instanceof AuditRecord answer ? digest.of(answer) : null;
    return of(record, record.body(), numbers, List.of(), extra);
  }

  static Prepared taking(ChainRecord order, List<Masked> taken) {
    return of(order, order.body(), null, taken, TransactionalWrite.NOTHING);
  }

  private static Prepared of(
      ChainRecord record,
      CanonicalJson body,
      byte @Nullable [] numbers,
      List<Masked> taken,
      TransactionalWrite extra) {
    body.sha256(); // Kept with the text, so that the writer finds it.
    return new Prepared(
        record,
        Columns.of(record),
        body,
        PackedText.of(body),
        findings(record),
        numbers,
        taken,
        extra);
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
