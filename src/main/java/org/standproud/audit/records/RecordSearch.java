package org.standproud.audit.records;

import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.audit.ChainRecord;
import org.standproud.audit.RecordType;
import org.standproud.audit.chain.ChainKey;
import org.standproud.audit.chain.Link;
import org.standproud.rules.trace.Kind;

/** Finds records by their index columns. */
public final class RecordSearch {

  /** Most records on one page. */
  public static final int LARGEST_PAGE = 500;

  /** Whole records are long; at most this many are in memory. */
  private static final int ROWS_AT_A_TIME = 4;

  private static final String CURSOR = "before:";

  private final JdbcClient client;
  private final ChainKey key;

  RecordSearch(DataSource dataSource, ChainKey key) {
    this.client = JdbcClient.create(dataSource);
    this.key = key;
  }

  RecordPage page(RecordQuery query, int limit, @Nullable String cursor) {
    if (limit < 1 || limit > LARGEST_PAGE) {
      throw new IllegalArgumentException("limit " + limit + " is not within 1 to " + LARGEST_PAGE);
    }
    // One more than requested, to know whether there is a next page.
    List<RecordSummary> found = rows(query, before(cursor), limit + 1, this::summary);
    if (found.size() <= limit) {
      return new RecordPage(found, null);
    }
    List<RecordSummary> page = found.subList(0, limit);
    return new RecordPage(page, cursor(page.get(limit - 1).stored().sequence()));
  }

  /**
   * What a list shows of a row: its columns if they are as filed, otherwise the sealed record, and
   * nothing of a record that is not as sealed.
   */
  private RecordSummary summary(ResultSet rs, int number) throws SQLException {
    long sequence = rs.getLong("sequence");
    String seal = rs.getString("seal");
    Columns columns = RecordTables.COLUMNS.mapRow(rs, number);
    String filed = rs.getString("filed");
    if (filed != null && key.filed(columns.filing(sequence), filed)) {
      return columns.summary(sequence, seal);
    }
    Link link = RecordTables.readRow(rs, number).link();
    return key.sealed(link)
        ? Columns.of(ChainRecord.from(link.text())).summary(sequence, seal)
        : columns.altered().summary(sequence, seal);
  }

  /** Passes every row, newest first; only some are in memory at a time. */
  void each(RecordQuery query, Consumer<RecordTables.Row> use) {
    stream(query).forEach(use);
  }

  /** The same as a lazy stream. */
  Stream<RecordTables.Row> stream(RecordQuery query) {
    return Stream.iterate(
            rows(query, Long.MAX_VALUE, ROWS_AT_A_TIME),
            page -> !page.isEmpty(),
            page -> rows(query, page.get(page.size() - 1).link().sequence(), ROWS_AT_A_TIME))
        .flatMap(List::stream);
  }

  long count(RecordQuery query) {
    Where where = where(query);
    return client
        .sql("select count(*) from audit_record r" + where.text())
        .params(where.values)
        .query(Long.class)
        .single();
  }

  List<RecordTables.Row> rows(RecordQuery query, long before, int most) {
    return rows(query, before, most, RecordTables::readRow);
  }

  /** Rows of decisions in a period, newest first. */
  List<RecordTables.Row> decisions(RecordQuery span, long before, int most) {
    Where where = new Where();
    where.add("r.record_type in (?, ?)", RecordType.ACCEPTANCE.word());
    where.values.add(RecordType.WITHDRAWAL.word());
    where.times(span);
    return rows(where, "r.sequence desc", before, most, RecordTables::readRow);
  }

  private static Where where(RecordQuery query) {
    Where where = new Where();
    where.add("r.record_type = ?", RecordType.ASSESSMENT.word());
    where.times(query);
    where.words(query, false);
    where.finding(query);
    return where;
  }

  private <T> List<T> rows(RecordQuery query, long before, int most, RowMapper<T> mapper) {
    // All rows are of one type; ordering by it too makes H2 use its index instead of sorting.
    return rows(where(query), "r.record_type desc, r.sequence desc", before, most, mapper);
  }

  private <T> List<T> rows(Where where, String order, long before, int most, RowMapper<T> mapper) {
    where.add("r.sequence < ?", before);
    return client
        .sql(
            "select r.* from audit_record r"
                + where.text()
                + " order by "
                + order
                + " fetch first "
                + most
                + " rows only")
        .params(where.values)
        .query(mapper)
        .list();
  }

  List<RuleCount> countByRule(RecordQuery query, Duration span) {
    long seconds = span.getSeconds();
    if (seconds < 1 || span.getNano() != 0) {
      throw new IllegalArgumentException("span " + span + " is not a whole number of seconds");
    }
    Where where = new Where();
    where.add("r.record_type = ?", RecordType.ASSESSMENT.word());
    where.add("r.record_type = ?", RecordType.ASSESSMENT.word());
    where.times(query);
    where.words(query, false);
    where.words(query, true);
    return client
        .sql(
            "select f.card_id, f.severity, f.kind,"
                + " cast(floor(extract(epoch from r.recorded_at) / "
                + seconds
                + ") as bigint) as span, count(*) as findings"
                + " from audit_finding f join audit_record r on r.sequence = f.sequence"
                + where.text()
                + " group by f.card_id, f.severity, f.kind, span"
                + " order by f.card_id, f.severity, f.kind, span")
        .params(where.values)
        .query(
            (rs, n) ->
                new RuleCount(
                    rs.getString(1),
                    rs.getString(2),
                    rs.getString(3),
                    Instant.ofEpochSecond(rs.getLong(4) * seconds),
                    rs.getLong(5)))
        .list();
  }

  /** How often each card fired, and how often its finding was accepted. */
  List<RuleUse> useOfRules(RecordQuery query, Set<String> inService) {
    Where where = new Where();
    where.times(query);
    Map<String, RuleUse> use = new TreeMap<>();
    inService.forEach(card -> use.put(card, new RuleUse(card, true, 0, 0, 0, null)));
    client
        .sql(
            "select f.card_id, f.kind, count(*), max(r.recorded_at)"
                + " from audit_finding f join audit_record r on r.sequence = f.sequence"
                + where.text()
                + " group by f.card_id, f.kind")
        .params(where.values)
        .query(
            (ResultSet rs) -> {
              RuleUse more =
                  use(
                      rs.getString(1),
                      rs.getString(2),
                      rs.getLong(3),
                      rs.getObject(4, OffsetDateTime.class).toInstant());
              boolean serves = inService.contains(more.cardId());
              use.merge(more.cardId(), more, (a, b) -> together(a, b, serves));
            });
    return List.copyOf(use.values());
  }

  private static RuleUse use(String card, String kind, long count, Instant last) {
    boolean accepted = kind.equals(Prepared.ACCEPTED);
    return new RuleUse(
        card,
        false,
        kind.equals(Kind.FAIL.words()) ? count : 0,
        kind.equals(Kind.OPEN.words()) ? count : 0,
        accepted ? count : 0,
        accepted ? null : last);
  }

  private static RuleUse together(RuleUse a, RuleUse b, boolean inService) {
    Instant first = a.last();
    Instant second = b.last();
    return new RuleUse(
        a.cardId(),
        inService,
        a.fails() + b.fails(),
        a.opens() + b.opens(),
        a.accepted() + b.accepted(),
        first == null || second != null && second.isAfter(first) ? second : first);
  }

  private static String cursor(long sequence) {
    return Base64.getUrlEncoder()
        .withoutPadding()
        .encodeToString((CURSOR + sequence).getBytes(StandardCharsets.US_ASCII));
  }

  private static long before(@Nullable String cursor) {
    if (cursor == null) {
      return Long.MAX_VALUE;
    }
    try {
      String text = new String(Base64.getUrlDecoder().decode(cursor), StandardCharsets.US_ASCII);
      if (text.startsWith(CURSOR)) {
        return Long.parseLong(text.substring(CURSOR.length()));
      }
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("cursor was not given by a page", e);
    }
    throw new IllegalArgumentException("cursor was not given by a page");
  }

  /** Conditions with their values; the texts are constants, caller input is always a value. */
  private static final class Where {

    private final List<String> conditions = new ArrayList<>();
    private final List<Object> values = new ArrayList<>();

    void add(String condition, Object value) {
      conditions.add(condition);
      values.add(value);
    }

    void times(RecordQuery query) {
      if (query.from() != null) {
        add("r.recorded_at >= ?", query.from().atOffset(ZoneOffset.UTC));
      }
      if (query.until() != null) {
        add("r.recorded_at < ?", query.until().atOffset(ZoneOffset.UTC));
      }
    }

    void words(RecordQuery query, boolean ofFinding) {
      for (Map.Entry<RecordQuery.By, String> word : query.words().entrySet()) {
        if (word.getKey().ofFinding() == ofFinding) {
          add(word.getKey().column() + " = ?", word.getValue());
        }
      }
    }

    void finding(RecordQuery query) {
      Where finding = new Where();
      finding.words(query, true);
      if (!finding.conditions.isEmpty()) {
        conditions.add(
            "exists (select 1 from audit_finding f"
                + finding.text()
                + " and f.sequence = r.sequence)");
        values.addAll(finding.values);
      }
    }

    String text() {
      return conditions.isEmpty() ? "" : " where " + String.join(" and ", conditions);
    }
  }
}
