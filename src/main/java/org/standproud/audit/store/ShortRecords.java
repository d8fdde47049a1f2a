package org.standproud.audit.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
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
   * A row with its numbers, if they lie beside it.
   *
   * @param sequence its place
   * @param id its id
   * @param jobOrder the job order, null if none was given or it is withheld
   * @param verdict the verdict
   * @param numbers the numbers
   */
  record Row(
      long sequence,
      UUID id,
      @Nullable String jobOrder,
      String verdict,
      byte @Nullable [] numbers) {}

  ShortRecords(RecordTables tables, TransactionTemplate transaction, InShort inShort) {
    this.tables = tables;
    this.transaction = transaction;
    this.inShort = inShort;
  }

  Stream<RecordInShort> stream() {
    return Stream.iterate(
            tables.inShort(Long.MAX_VALUE, ROWS_AT_A_TIME),
            page -> !page.isEmpty(),
            page -> tables.inShort(page.get(page.size() - 1).sequence(), ROWS_AT_A_TIME))
        .flatMap(this::told);
  }

  private Stream<RecordInShort> told(List<Row> page) {
    Map<Long, List<RecordedFinding>> findings =
        tables.findingsByRecord(page.get(page.size() - 1).sequence(), page.get(0).sequence());
    return page.stream()
        .flatMap(row -> told(row, findings.getOrDefault(row.sequence(), List.of())).stream());
  }

  private Optional<RecordInShort> told(Row row, List<RecordedFinding> findings) {
    byte[] numbers = row.numbers() == null ? made(row) : row.numbers();
    return Optional.ofNullable(numbers)
        .map(n -> new RecordInShort(row.id(), row.jobOrder(), row.verdict(), findings, n));
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
