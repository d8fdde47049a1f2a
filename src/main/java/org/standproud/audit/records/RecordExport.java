package org.standproud.audit.records;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.standproud.audit.AuditRecord;

/** Exports the records of a query, any number of them, a page at a time. */
public final class RecordExport {

  private static final String[] HEADINGS = {
    "id",
    "time",
    "caller",
    "jobOrder",
    "workMaster",
    "operation",
    "machine",
    "verdict",
    "score",
    "findings",
    "ruleBase",
    "catalogue",
    "engine",
    "sequence",
    "seal",
    "whole"
  };

  private final Records records;

  /**
   * Creates the export.
   *
   * @param records the records
   */
  public RecordExport(Records records) {
    this.records = records;
  }

  /** CSV (RFC 4180), one line a record; findings as card:severity:kind. */
  public void csv(RecordQuery query, Writer out) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader(HEADINGS).get();
    try (CSVPrinter table = new CSVPrinter(out, format)) {
      records.each(query, stored -> line(table, stored));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** NDJSON, one record a line, as sealed or as the rest of it. */
  public void ndjson(RecordQuery query, Writer out) throws IOException {
    try {
      records.each(query, stored -> write(stored.record().body().text() + "\n", out));
      out.flush();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static void write(String line, Writer out) {
    try {
      out.write(line);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void line(CSVPrinter table, StoredRecord stored) {
    AuditRecord r = stored.record();
    try {
      table.printRecord(
          r.id(),
          r.time(),
          InertCell.of(r.asked().caller()),
          InertCell.of(r.asked().jobOrder()),
          InertCell.of(r.asked().workMaster()),
          InertCell.of(r.asked().operation()),
          InertCell.of(r.asked().machine()),
          r.judged().verdict(),
          r.judged().score(),
          r.findings().stream()
              .map(f -> f.cardId() + ":" + f.severity() + ":" + f.kind())
              .collect(Collectors.joining(" ")),
          r.versions().ruleBase(),
          r.versions().catalogue(),
          r.versions().engine(),
          stored.stored().sequence(),
          stored.stored().seal(),
          stored.whole());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
