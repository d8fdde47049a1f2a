package org.standproud.audit.store;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.transaction.support.TransactionTemplate;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.RecordedFinding;

/**
 * Answers in short, newest first, a page at a time. One that has no numbers beside it yet is read
 * whole, and its numbers are put there for the next time.
 */
final class ShortRecords {

  private static final int ROWS_AT_A_TIME = 256;

  private final RecordTables tables;
  private final TransactionTemplate transaction;
  private final InShort inShort;

  /**
   * A row without its text.
   *
   * @param sequence its place
   * @param answer whether it is an answer, not a decision
   * @param id its id
   * @param jobOrder the job order, null if none was given or it is withheld
   * @param verdict the verdict, null if it is no answer
   */
  record Row(
      long sequence,
      boolean answer,
      UUID id,
      @Nullable String jobOrder,
      @Nullable String verdict) {}

  ShortRecords(RecordTables tables, TransactionTemplate transaction, InShort inShort) {
    this.tables = tables;
    this.transaction = transaction;
    this.inShort = inShort;
  }

  Stream<RecordInShort> stream() {
    return LongStream.iterate(
            tables.head().sequence(), last -> last > 0, last -> last - ROWS_AT_A_TIME)
        .boxed()
        .flatMap(last -> told(Math.max(1, last - ROWS_AT_A_TIME + 1), last));
  }

  private Stream<RecordInShort> told(long first, long last) {
    Map<Long, List<RecordedFinding>> findings = tables.findingsByRecord(first, last);
    Map<Long, byte[]> numbers = tables.shorts(first, last);
    return tables.summaries(first, last).stream()
        .filter(Row::answer)
        .flatMap(
            row ->
                told(
                    row,
                    findings.getOrDefault(row.sequence(), List.of()),
                    numbers.get(row.sequence()))
                    .stream());
  }

  private Optional<RecordInShort> told(
      Row row, List<RecordedFinding> findings, byte @Nullable [] kept) {
    return Optional.ofNullable(kept == null ? made(row) : kept)
        .map(
            n ->
                new RecordInShort(
                    row.id(), row.jobOrder(), requireNonNull(row.verdict()), findings, n));
  }

  private byte @Nullable [] made(Row row) {
    return transaction.execute(
        status -> {
          // Locked, so that nobody takes the text away while its numbers are put beside it.
          RecordTables.Row whole = tables.lock(row.sequence());
          byte[] numbers = inShort.of(AuditRecord.from(whole.link().text()));
          if (numbers != null && !tables.hasShort(row.sequence())) {
            tables.insertShort(row.sequence(), numbers);
          }
          return numbers;
        });
  }
}
