package org.standproud.audit.records;

import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A query for records that match every word and lie in a period.
 *
 * <p>Card, severity and kind must hold for one and the same finding.
 *
 * @param words words by field
 * @param from start of the period, null for no limit
 * @param until end of the period, exclusive, null for no limit
 */
public record RecordQuery(Map<By, String> words, @Nullable Instant from, @Nullable Instant until) {

  /** The searchable fields of a record. */
  public enum By {
    /** The caller. */
    CALLER("r.caller"),
    /** ISA-95 job order. */
    JOB_ORDER("r.job_order"),
    /** ISA-95 work master. */
    WORK_MASTER("r.work_master"),
    /** Operation of the job. */
    OPERATION("r.operation"),
    /** Machine name. */
    MACHINE("r.machine"),
    /** The verdict in words. */
    VERDICT("r.verdict"),
    /** Rule-base revision. */
    RULE_BASE("r.rule_base"),
    /** Catalogue revision. */
    CATALOGUE("r.catalogue"),
    /** Rule card of a finding. */
    CARD("f.card_id"),
    /** Severity of a finding. */
    SEVERITY("f.severity"),
    /** SARIF result kind of a finding. */
    KIND("f.kind");

    private final String column;

    By(String column) {
      this.column = column;
    }

    String column() {
      return column;
    }

    boolean ofFinding() {
      return column.startsWith("f.");
    }
  }

  /** Keeps the words as they are now. */
  public RecordQuery {
    words = Map.copyOf(words);
  }

  /**
   * Matches every record.
   *
   * @return a query to narrow
   */
  public static RecordQuery all() {
    return new RecordQuery(Map.of(), null, null);
  }

  /**
   * Narrows the query by a word.
   *
   * @param by the field
   * @param word the word, exact
   * @return the narrower query
   */
  public RecordQuery with(By by, String word) {
    Map<By, String> more = new TreeMap<>(words);
    more.put(by, word);
    return new RecordQuery(more, from, until);
  }

  /**
   * Narrows the query by a period.
   *
   * @param earliest start of the period
   * @param end end of the period, exclusive
   * @return the narrower query
   */
  public RecordQuery between(@Nullable Instant earliest, @Nullable Instant end) {
    return new RecordQuery(words, earliest, end);
  }
}
