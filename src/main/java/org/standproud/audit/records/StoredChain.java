package org.standproud.audit.records;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.ChainRecord;
import org.standproud.audit.LogEntry;
import org.standproud.audit.RecordType;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.canonical.NotCanonical;
import org.standproud.audit.chain.ChainCheck;
import org.standproud.audit.chain.ChainDigest;
import org.standproud.audit.chain.ChainExport;
import org.standproud.audit.chain.ChainFault;
import org.standproud.audit.chain.ChainReport;
import org.standproud.audit.chain.ChainVerifier;
import org.standproud.audit.chain.CheckpointFile;
import org.standproud.audit.chain.PublicCheck;

/** The stored chain, read from its first record to its last. */
final class StoredChain {

  /** A record is some hundred kilobytes as text, and several callers may read the chain at once. */
  private static final int ROWS_AT_A_TIME = 4;

  private final RecordTables tables;
  private final ChainKeys seal;
  private final RuleBaseArchive ruleBases;
  private final EvidenceDigest digest;
  private final CheckpointFile outside;
  private final Clock clock;
  private final List<ChainedLog> logs = new CopyOnWriteArrayList<>();

  StoredChain(
      RecordTables tables,
      ChainKeys seal,
      RuleBaseArchive ruleBases,
      EvidenceDigest digest,
      CheckpointFile outside,
      Clock clock) {
    this.tables = tables;
    this.seal = seal;
    this.ruleBases = ruleBases;
    this.digest = digest;
    this.outside = outside;
    this.clock = clock;
  }

  ChainReport verify() {
    ChainReport found = verify(new ChainVerifier(seal.key(), List.of(seal.signing().verifying())));
    // With valid seals, what is left is what an auditor checks without them.
    return found.whole() ? verify(new PublicCheck(List.of(seal.signing().verifying()))) : found;
  }

  /** Adds a log outside the chain to the check. */
  void check(ChainedLog log) {
    logs.add(log);
  }

  private ChainReport verify(ChainCheck check) {
    List<LogCheck> beside = logs.stream().map(LogCheck::new).toList();
    List<String> stated = outside.lines();
    RecordTables.Head head = tables.head();
    ChainExport.holdAll(check, stated);
    // The head row has no seal of its own, but it is one more row a forger must change.
    check.hold(seal.state(head, clock.instant()));
    eachGroup(Long.MAX_VALUE, rows -> check(rows, check, beside));
    beside.forEach(log -> log.finish(check));
    return check.finish();
  }

  /** The digest over all records, if it was never stored. */
  String digest() {
    String[] digest = {ChainDigest.START};
    eachGroup(
        Long.MAX_VALUE,
        rows -> rows.forEach(r -> digest[0] = ChainDigest.after(digest[0], r.link())));
    return digest[0];
  }

  void export(Writer out) {
    RecordTables.Head head = tables.head();
    try {
      ruleBases.texts(text -> write(ChainExport.beside(RuleBaseArchive.NAME, text), out));
      eachGroup(head.sequence(), rows -> rows.forEach(r -> write(ChainExport.line(r.link()), out)));
      write(ChainExport.line(seal.state(head, clock.instant())), out);
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

  private void check(List<RecordTables.Row> rows, ChainCheck verifier, List<LogCheck> beside) {
    long first = rows.get(0).link().sequence();
    long last = rows.get(rows.size() - 1).link().sequence();
    Map<Long, List<RecordedFinding>> findings = tables.findingsByRecord(first, last);
    Map<Long, DigestReader.Row> shorts = tables.shorts(first, last);
    for (RecordTables.Row row : rows) {
      long place = row.link().sequence();
      boolean sealed = verifier.next(row.link());
      if (sealed && !agrees(row, findings.getOrDefault(place, List.of()), shorts.get(place))) {
        verifier.fault(
            ChainFault.Kind.EDITED,
            place,
            "This record is intact, but its index columns differ from it");
      }
      if (sealed && row.columns().recordType().equals(RecordType.LOG_ENTRY.word())) {
        entry(row).ifPresent(entry -> beside.forEach(log -> log.next(place, entry)));
      }
    }
  }

  private static Optional<LogEntry> entry(RecordTables.Row row) {
    try {
      return ChainRecord.from(row.link().text()) instanceof LogEntry entry
          ? Optional.of(entry)
          : Optional.empty();
    } catch (NotCanonical e) {
      return Optional.empty();
    }
  }

  private boolean agrees(
      RecordTables.Row row, List<RecordedFinding> findings, DigestReader.@Nullable Row beside) {
    try {
      ChainRecord record = ChainRecord.from(row.link().text());
      return Columns.of(record).equals(row.columns())
          && Prepared.findings(record).equals(findings)
          && (beside == null
              || record instanceof AuditRecord answer && beside.agrees(answer, digest));
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
