package org.standproud.audit.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.canonical.NotCanonical;
import org.standproud.audit.chain.ChainExport;
import org.standproud.audit.chain.ChainFault;
import org.standproud.audit.chain.ChainKey;
import org.standproud.audit.chain.ChainReport;
import org.standproud.audit.chain.ChainVerifier;
import org.standproud.audit.chain.CheckpointFile;

/** The chain as it lies in the database, read from its first record to its last. */
final class StoredChain {

  private static final int ROWS_AT_A_TIME = 500;

  private final RecordTables tables;
  private final ChainKey key;
  private final CheckpointFile outside;
  private final Clock clock;

  StoredChain(RecordTables tables, ChainKey key, CheckpointFile outside, Clock clock) {
    this.tables = tables;
    this.key = key;
    this.outside = outside;
    this.clock = clock;
  }

  ChainReport verify() {
    ChainVerifier verifier = new ChainVerifier(key);
    List<String> stated = outside.lines();
    RecordTables.Head head = tables.head();
    ChainExport.holdAll(verifier, stated);
    // The head row has no seal of its own, but it is one more place a forger must think of.
    verifier.hold(key.sign(head.sequence(), head.seal(), clock.instant()));
    eachGroup(Long.MAX_VALUE, rows -> check(rows, verifier));
    return verifier.finish();
  }

  void export(Writer out) {
    RecordTables.Head head = tables.head();
    try {
      eachGroup(head.sequence(), rows -> rows.forEach(r -> write(ChainExport.line(r.link()), out)));
      write(ChainExport.line(key.sign(head.sequence(), head.seal(), clock.instant())), out);
      out.flush();
    } catch (IOException e) {
      throw new UncheckedIOException("Export of the chain", e);
    }
  }

  private void eachGroup(long until, Consumer<List<RecordTables.Row>> use) {
    long after = Long.MIN_VALUE;
    while (true) {
      List<RecordTables.Row> rows = tables.rows(after, until, ROWS_AT_A_TIME);
      if (rows.isEmpty()) {
        return;
      }
      use.accept(rows);
      after = rows.get(rows.size() - 1).link().sequence();
    }
  }

  private void check(List<RecordTables.Row> rows, ChainVerifier verifier) {
    long first = rows.get(0).link().sequence();
    long last = rows.get(rows.size() - 1).link().sequence();
    Map<Long, List<RecordedFinding>> findings =
        tables.findings(first, last).stream()
            .collect(
                Collectors.groupingBy(
                    RecordTables.FindingRow::sequence,
                    Collectors.mapping(RecordTables.FindingRow::finding, Collectors.toList())));
    for (RecordTables.Row row : rows) {
      long place = row.link().sequence();
      boolean sealed = verifier.next(row.link());
      if (sealed && !agrees(row, findings.getOrDefault(place, List.of()))) {
        verifier.fault(
            ChainFault.Kind.EDITED, place, "This record is whole, but filed under other words");
      }
    }
  }

  private static boolean agrees(RecordTables.Row row, List<RecordedFinding> findings) {
    try {
      AuditRecord record = AuditRecord.from(row.link().body());
      return Columns.of(record).equals(row.columns()) && record.findings().equals(findings);
    } catch (NotCanonical e) {
      return false;
    }
  }

  private static void write(String line, Writer out) {
    try {
      out.write(line);
      out.write('\n');
    } catch (IOException e) {
      throw new UncheckedIOException("Export of the chain", e);
    }
  }
}
