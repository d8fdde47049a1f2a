package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.standproud.IntegrationTest;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.chain.ChainFault;
import org.standproud.audit.chain.ChainReport;
import org.standproud.audit.records.Records;
import org.standproud.shop.CatalogueStore;
import tools.jackson.databind.JsonNode;

/** What is changed in the database past the service is found. */
@IntegrationTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ForgedLogsTest {

  private RunningService service;
  private JdbcTemplate database;
  private Records records;

  @BeforeAll
  void start(@TempDir Path directory) {
    service = RunningService.start(directory, Path.of("rules"));
    database = new JdbcTemplate(service.part(DataSource.class));
    records = service.part(Records.class);
    assertThat(service.assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
  }

  @AfterAll
  void stop() {
    service.close();
  }

  @Test
  void unchangedLogsAreIntact() {
    assertThat(records.verify()).matches(ChainReport::whole);
  }

  @ParameterizedTest
  @CsvSource({
    "rule_base_log, publisher, number",
    "rule_base_log, note, number",
    "rule_base_revision, author, id",
    "rule_base_revision, content, id",
    "catalogue_revision, author, sequence",
    "catalogue_revision, note, sequence",
    "catalogue_revision, revision, sequence"
  })
  void aColumnThatIsChangedIsFound(String table, String column, String key) {
    Object id = database.queryForObject("select min(" + key + ") from " + table, Object.class);
    String where = " where " + key + " = ?";
    String was =
        database.queryForObject("select " + column + " from " + table + where, String.class, id);
    String set = "update " + table + " set " + column + " = ?" + where;
    String forged = column.equals("content") ? was.replaceFirst("HOLD-001", "HOLD-901") : "another";
    database.update(set, forged, id);
    try {
      assertThat(records.verify().faults())
          .extracting(ChainFault::kind)
          .containsExactly(ChainFault.Kind.EDITED);
    } finally {
      database.update(set, was, id);
    }
    assertThat(records.verify()).matches(ChainReport::whole);
  }

  /** A vise of ten times its force, its own digest changed with it. */
  @Test
  void anItemOfTheCatalogueThatIsChangedIsFoundAndNotServed() {
    List<String> row = new ArrayList<>();
    database.query(
        "select name, told, revision from catalogue_item where shelf = 'vises' order by name"
            + " fetch first 1 rows only",
        rs -> {
          row.addAll(List.of(rs.getString(1), rs.getString(2), rs.getString(3)));
        });
    String forged = row.get(1).replaceFirst("(\"greatestClampingForce\":[^0-9]*)([0-9]+)", "$1$20");
    assertThat(forged).isNotEqualTo(row.get(1));
    String set = "update catalogue_item set told = ?, revision = ? where name = ?";
    try {
      database.update(set, forged, row.get(2), row.get(0));
      CatalogueStore replica =
          new CatalogueStore(service.part(DataSource.class), Clock.systemUTC());
      assertThatThrownBy(replica::now)
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("changed in the database");
      database.update(set, forged, new CanonicalJson(forged).sha256(), row.get(0));
      assertThat(records.verify().faults())
          .extracting(ChainFault::kind)
          .containsExactly(ChainFault.Kind.EDITED);
    } finally {
      database.update(set, row.get(1), row.get(2), row.get(0));
    }
    assertThat(records.verify()).matches(ChainReport::whole);
  }

  /** The filter finds it by its forged verdict; what is shown is what was sealed. */
  @Test
  void aListShowsWhatWasSealedAndNotWhatAColumnWasChangedTo() {
    String self =
        service.assess(RunningService.seed("03")).headers().firstValue("Location").orElseThrow();
    String id = self.substring(self.lastIndexOf('/') + 1);
    String set = "update audit_record set verdict = ?, score = ? where id = ?";
    Double score =
        database.queryForObject(
            "select score from audit_record where id = ?", Double.class, UUID.fromString(id));
    database.update(set, "run", 100.0, UUID.fromString(id));
    try {
      JsonNode listed = listed("/v1/assessments?verdict=run&limit=500", id);
      assertThat(listed.toString()).contains("do not run").doesNotContain("100.0");
      assertThat(records.verify().faults())
          .extracting(ChainFault::kind)
          .containsExactly(ChainFault.Kind.EDITED);
      database.update("update audit_record set filed = null where id = ?", UUID.fromString(id));
      assertThat(listed("/v1/assessments?verdict=run&limit=500", id).toString())
          .contains("do not run");
    } finally {
      database.update(set, "do not run", score, UUID.fromString(id));
    }
    assertThat(records.verify()).matches(ChainReport::whole);
  }

  @Test
  void aFindingThatIsTakenOutOrChangedIsFound() {
    for (String forged :
        List.of(
            "update audit_finding set kind = 'pass' where sequence = ? and kind = 'fail'",
            "delete from audit_finding where sequence = ? and kind = 'fail'")) {
      assertThat(service.assess(RunningService.seed("03")).statusCode()).isEqualTo(201);
      Long last = database.queryForObject("select max(sequence) from audit_record", Long.class);
      List<Object[]> rows =
          database.query(
              "select sequence, place, card_id, severity, kind from audit_finding where sequence = ?",
              (rs, n) ->
                  new Object[] {
                    rs.getLong(1), rs.getInt(2), rs.getString(3), rs.getString(4), rs.getString(5)
                  },
              last);
      assertThat(database.update(forged, last)).isPositive();
      try {
        assertThat(records.verify().faults())
            .extracting(ChainFault::kind)
            .containsExactly(ChainFault.Kind.EDITED);
      } finally {
        database.update("delete from audit_finding where sequence = ?", last);
        database.batchUpdate(
            "insert into audit_finding (sequence, place, card_id, severity, kind)"
                + " values (?, ?, ?, ?, ?)",
            rows);
      }
      assertThat(records.verify()).matches(ChainReport::whole);
    }
  }

  private JsonNode listed(String list, String id) {
    for (JsonNode line : RunningService.json(service.get(list)).path("assessments")) {
      if (line.toString().contains(id)) {
        return line;
      }
    }
    throw new AssertionError(service.get(list).body());
  }

  @Test
  void aRevisionThatIsTakenOutOrPutInIsFound() {
    database.update(
        "insert into catalogue_revision select max(sequence) + 1, 'x', max(made_at), 'Ann', 'n'"
            + " from catalogue_revision");
    try {
      assertThat(records.verify().faults())
          .extracting(ChainFault::kind)
          .containsExactly(ChainFault.Kind.INSERTED);
    } finally {
      database.update("delete from catalogue_revision where author = 'Ann'");
    }
    String log = "select number, revision, publisher, note, parent from rule_base_log";
    List<Object[]> rows =
        database.query(
            log,
            (rs, n) ->
                new Object[] {
                  rs.getLong(1), rs.getString(2), rs.getString(3), rs.getString(4), rs.getString(5)
                });
    database.update("delete from rule_base_log");
    try {
      assertThat(records.verify().faults())
          .extracting(ChainFault::kind)
          .containsExactly(ChainFault.Kind.DELETED);
    } finally {
      database.batchUpdate("insert into rule_base_log values (?, ?, ?, ?, ?)", rows);
    }
    assertThat(records.verify()).matches(ChainReport::whole);
  }
}
