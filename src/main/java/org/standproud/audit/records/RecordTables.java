package org.standproud.audit.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.RecordType;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.chain.ChainKey;
import org.standproud.audit.chain.Link;
import org.standproud.audit.chain.Remainder;

/** The audit tables; the caller controls transactions. */
public final class RecordTables {

  static final RowMapper<Columns> COLUMNS = new DataClassRowMapper<>(Columns.class);

  private static final String INSERT_RECORD =
      "insert into audit_record (sequence, previous, seal, record_type, id, about, recorded_at,"
          + " caller, job_order, work_master, operation, machine, verdict, score, rule_base,"
          + " catalogue, engine, packed, body_digest, remainder, filed)"
          + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
  private static final String INSERT_FINDING =
      "insert into audit_finding (sequence, place, card_id, severity, kind) values (?, ?, ?, ?, ?)";

  private static final String INSERT_SHORT =
      "insert into audit_short (sequence, id, job_order, verdict, body) values (?, ?, ?, ?, ?)";

  private static final String MASK_RECORD =
      "update audit_record set body = null, packed = null, body_digest = ?, remainder = ?, caller = ?,"
          + " job_order = ?, work_master = ?, operation = ?, machine = ?, filed = ?"
          + " where sequence = ? and record_type not in ('withholding', 'log_entry')";

  private final JdbcTemplate jdbc;
  private final JdbcClient client;
  private final boolean h2;

  public RecordTables(DataSource dataSource) {
    this.jdbc = new JdbcTemplate(dataSource);
    this.client = JdbcClient.create(jdbc);
    this.h2 =
        "H2"
            .equals(
                jdbc.execute(
                    (ConnectionCallback<String>) c -> c.getMetaData().getDatabaseProductName()));
  }

  /** The end of the chain. */
  record Head(@Nullable String keyId, long sequence, String seal, @Nullable String digest) {

    /** The digest, after {@link #setDigest} has ensured that there is one. */
    String known() {
      return Objects.requireNonNull(digest, "digest of the chain");
    }
  }

  /** A row as stored, whether or not its parts agree. */
  record Row(Link link, Columns columns) {}

  private record FindingRow(long sequence, RecordedFinding finding) {}

  Head head() {
    return head("");
  }

  Head lockHead() {
    return head(" for update");
  }

  private Head head(String lock) {
    return client
        .sql("select key_id, sequence, seal, digest from audit_chain_head where id = 1" + lock)
        .query(
            (rs, n) -> new Head(rs.getString(1), rs.getLong(2), rs.getString(3), rs.getString(4)))
        .single();
  }

  void claim(String keyId) {
    client
        .sql("update audit_chain_head set key_id = ? where id = 1 and key_id is null")
        .param(keyId)
        .update();
  }

  void moveHead(Link last, String digest) {
    client
        .sql("update audit_chain_head set sequence = ?, seal = ?, digest = ? where id = 1")
        .params(last.sequence(), last.seal(), digest)
        .update();
  }

  void setDigest(String digest) {
    client.sql("update audit_chain_head set digest = ? where id = 1").param(digest).update();
  }

  void insert(List<Link> links, List<Prepared> records, ChainKey key) {
    List<Object[]> rows = new ArrayList<>();
    List<Object[]> findings = new ArrayList<>();
    List<@Nullable Object[]> digests = new ArrayList<>();
    for (int i = 0; i < links.size(); i++) {
      rows.add(row(links.get(i), records.get(i), key));
      List<RecordedFinding> recorded = records.get(i).findings();
      for (int place = 0; place < recorded.size(); place++) {
        findings.add(row(links.get(i).sequence(), place, recorded.get(place)));
      }
      byte[] numbers = records.get(i).numbers();
      if (numbers != null) {
        Columns c = records.get(i).columns();
        digests.add(
            new @Nullable Object[] {
              links.get(i).sequence(), c.id(), c.jobOrder(), c.verdict(), numbers
            });
      }
    }
    jdbc.batchUpdate(INSERT_RECORD, rows);
    jdbc.batchUpdate(INSERT_FINDING, findings);
    jdbc.batchUpdate(INSERT_SHORT, digests);
  }

  void mask(Prepared.Masked masked, ChainKey key) {
    Columns c = Columns.of(masked.left());
    int rows =
        jdbc.update(
            MASK_RECORD,
            masked.digest(),
            masked.left().body().text(),
            c.caller(),
            c.jobOrder(),
            c.workMaster(),
            c.operation(),
            c.machine(),
            key.filed(c.filing(masked.sequence())),
            masked.sequence());
    if (rows != 1) {
      throw new IllegalStateException(
          "No record that can be masked stands at " + masked.sequence());
    }
    if (masked.left() instanceof AuditRecord answer && answer.account().equals(Mask.NO_ACCOUNT)) {
      deleteShort(masked.sequence());
    } else {
      jdbc.update(
          "update audit_short set job_order = ? where sequence = ?",
          c.jobOrder(),
          masked.sequence());
    }
  }

  private void deleteShort(long sequence) {
    jdbc.update("delete from audit_short where sequence = ?", sequence);
  }

  void replaceShort(DigestReader.Row row) {
    deleteShort(row.sequence());
    jdbc.update(
        INSERT_SHORT, row.sequence(), row.id(), row.jobOrder(), row.verdict(), row.numbers());
  }

  /** Positions of the answers in a range, newest first; only the index is read. */
  List<Long> answers(long first, long last) {
    return client
        .sql(
            "select sequence from audit_record"
                + " where record_type = ? and sequence between ? and ?"
                + " order by record_type desc, sequence desc")
        .params(RecordType.ASSESSMENT.word(), first, last)
        .query(Long.class)
        .list();
  }

  /** Digests of the records in a range. */
  Map<Long, DigestReader.Row> shorts(long first, long last) {
    return client
        .sql(
            "select sequence, id, job_order, verdict, body from audit_short"
                + " where sequence between ? and ?")
        .params(first, last)
        .query(
            (rs, n) ->
                new DigestReader.Row(
                    rs.getLong(1),
                    rs.getObject(2, UUID.class),
                    rs.getString(3),
                    rs.getString(4),
                    rs.getBytes(5)))
        .list()
        .stream()
        .collect(Collectors.toMap(DigestReader.Row::sequence, Function.identity()));
  }

  /** One row, locked until the transaction ends. */
  Row lock(long sequence) {
    return client
        .sql("select * from audit_record where sequence = ? for update")
        .param(sequence)
        .query(RecordTables::readRow)
        .single();
  }

  private static @Nullable Object[] row(Link link, Prepared record, ChainKey key) {
    Columns c = record.columns();
    Remainder left = link.withheld();
    return new @Nullable Object[] {
      link.sequence(),
      link.previous(),
      link.seal(),
      c.recordType(),
      c.id(),
      c.about(),
      c.recordedAt(),
      c.caller(),
      c.jobOrder(),
      c.workMaster(),
      c.operation(),
      c.machine(),
      c.verdict(),
      c.score(),
      c.ruleBase(),
      c.catalogue(),
      c.engine(),
      link.body() == null ? null : record.packed(),
      left == null ? null : left.digest(),
      left == null ? null : left.text().text(),
      key.filed(c.filing(link.sequence()))
    };
  }

  private static Object[] row(long sequence, int place, RecordedFinding finding) {
    return new Object[] {sequence, place, finding.cardId(), finding.severity(), finding.kind()};
  }

  /**
   * With WRITE_DELAY=0 H2 passes a commit to the operating system, which survives a killed process,
   * but needs an explicit sync to survive a power cut. PostgreSQL does both by itself.
   */
  public void force() {
    if (h2) {
      jdbc.execute("checkpoint sync");
    }
  }

  Optional<Row> find(UUID id) {
    return client
        .sql("select * from audit_record where id = ?")
        .param(id)
        .query(RecordTables::readRow)
        .optional();
  }

  /** Records of a type about a subject, in order of creation. */
  List<Row> about(RecordType type, UUID about) {
    return client
        .sql("select * from audit_record where record_type = ? and about = ? order by sequence")
        .params(type.word(), about)
        .query(RecordTables::readRow)
        .list();
  }

  /** Records of a type for a job order, in order of creation. */
  List<Row> ofJobOrder(RecordType type, String jobOrder) {
    return client
        .sql("select * from audit_record where record_type = ? and job_order = ? order by sequence")
        .params(type.word(), jobOrder)
        .query(RecordTables::readRow)
        .list();
  }

  List<Row> rows(long after, long until, int most) {
    return client
        .sql(
            "select * from audit_record where sequence > ? and sequence <= ?"
                + " order by sequence fetch first "
                + most
                + " rows only")
        .params(after, until)
        .query(RecordTables::readRow)
        .list();
  }

  /** The findings of the records in a range, by position of the record. */
  Map<Long, List<RecordedFinding>> findingsByRecord(long first, long last) {
    return findings(first, last).stream()
        .collect(
            Collectors.groupingBy(
                FindingRow::sequence,
                Collectors.mapping(FindingRow::finding, Collectors.toList())));
  }

  private List<FindingRow> findings(long first, long last) {
    return client
        .sql(
            "select sequence, card_id, severity, kind from audit_finding"
                + " where sequence between ? and ? order by sequence, place")
        .params(first, last)
        .query(
            (rs, n) ->
                new FindingRow(
                    rs.getLong(1),
                    new RecordedFinding(rs.getString(2), rs.getString(3), rs.getString(4))))
        .list();
  }

  static Row readRow(ResultSet rs, int number) throws SQLException {
    byte[] packed = rs.getBytes("packed");
    // Records from before V10 hold their text uncompressed.
    String body = packed == null ? rs.getString("body") : PackedText.text(packed);
    String left = rs.getString("remainder");
    String digest = rs.getString("body_digest");
    // A row whose text was deleted by hand has neither; an empty remainder makes the check report
    // it.
    Remainder withheld =
        new Remainder(
            digest == null ? "" : digest, new CanonicalJson(left == null ? "null" : left));
    Link link =
        new Link(
            rs.getLong("sequence"),
            rs.getString("previous"),
            rs.getString("seal"),
            body == null ? null : new CanonicalJson(body),
            body == null ? withheld : null);
    return new Row(link, COLUMNS.mapRow(rs, number));
  }
}
