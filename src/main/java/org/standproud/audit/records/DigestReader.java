package org.standproud.audit.records;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.transaction.support.TransactionTemplate;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.RecordedFinding;

/**
 * Reads digests of answers, newest first, a page at a time. If a record has none yet, it is read
 * whole and its digest is stored.
 */
final class DigestReader {

  private static final int ROWS_AT_A_TIME = 256;

  private final RecordTables tables;
  private final TransactionTemplate transaction;
  private final EvidenceDigest digest;

  /**
   * A row.
   *
   * @param sequence position of its record
   * @param id id of its record
   * @param jobOrder the job order, or null
   * @param verdict the verdict
   * @param numbers the digest
   */
  record Row(long sequence, UUID id, @Nullable String jobOrder, String verdict, byte[] numbers) {

    /** The row of an answer, null if it has no digest or needs none. */
    static @Nullable Row of(long sequence, AuditRecord answer, EvidenceDigest digest) {
      byte[] numbers = digest.of(answer);
      return numbers == null
          ? null
          : new Row(
              sequence, answer.id(), answer.asked().jobOrder(), answer.judged().verdict(), numbers);
    }

    /** Whether it agrees with the answer. */
    boolean agrees(AuditRecord answer, EvidenceDigest digest) {
      return id.equals(answer.id())
          && Objects.equals(jobOrder, answer.asked().jobOrder())
          && verdict.equals(answer.judged().verdict())
          && digest.agree(numbers, answer);
    }
  }

  DigestReader(RecordTables tables, TransactionTemplate transaction, EvidenceDigest digest) {
    this.tables = tables;
    this.transaction = transaction;
    this.digest = digest;
  }

  Stream<DigestRecord> stream() {
    return LongStream.iterate(
            tables.head().sequence(), last -> last > 0, last -> last - ROWS_AT_A_TIME)
        .boxed()
        .flatMap(last -> digests(Math.max(1, last - ROWS_AT_A_TIME + 1), last));
  }

  private Stream<DigestRecord> digests(long first, long last) {
    Map<Long, List<RecordedFinding>> findings = tables.findingsByRecord(first, last);
    Map<Long, Row> kept = tables.shorts(first, last);
    return tables.answers(first, last).stream()
        .flatMap(place -> whole(place, kept.get(place)).stream())
        .map(
            row ->
                new DigestRecord(
                    row.id(),
                    row.jobOrder(),
                    row.verdict(),
                    findings.getOrDefault(row.sequence(), List.of()),
                    row.numbers()));
  }

  private Optional<Row> whole(long place, @Nullable Row kept) {
    return kept != null && digest.reads(kept.numbers())
        ? Optional.of(kept)
        : transaction.execute(status -> made(place));
  }

  private Optional<Row> made(long place) {
    // Locked, so that the text is not removed while its digest is stored.
    RecordTables.Row whole = tables.lock(place);
    Row made = Row.of(place, AuditRecord.from(whole.link().text()), digest);
    if (made != null) {
      tables.replaceShort(made);
    }
    return Optional.ofNullable(made);
  }
}
