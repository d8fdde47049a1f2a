package org.standproud.command.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;
import org.standproud.Standproud;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.SampleRecords;
import org.standproud.audit.chain.KeyPlaces;
import org.standproud.audit.records.ChainKeys;
import org.standproud.audit.records.PostgresServer;
import org.standproud.audit.records.Records;

/** What auditor and operator type, on a service that is stopped. */
@IntegrationTest
class AuditCommandTest {

  private static final Instant SEVEN = Instant.parse("2026-03-02T07:00:00Z");

  private @TempDir Path place;
  private Path data;
  private AuditRecord record;
  private String said = "";

  @BeforeEach
  void aStoppedServiceHasTwoRecords() throws Exception {
    data = place.resolve("data");
    record = SampleRecords.stopped("J-1", SEVEN);
    JdbcConnectionPool database = database(data);
    Flyway.configure().dataSource(database).load().migrate();
    try (Records records = records(database, data)) {
      records.append(record);
      records.append(SampleRecords.passed(SEVEN));
    }
    database.dispose();
  }

  @Test
  void whatWasSavedComesBackWholeInAnotherPlace() throws Exception {
    Path zip = place.resolve("saved.zip");
    assertThat(audit("backup", zip.toString(), "--directory", data.toString())).isZero();

    Path elsewhere = keysCarriedTo("elsewhere");
    assertThat(audit("restore", zip.toString(), "--directory", elsewhere.toString()))
        .as(said)
        .isZero();
    assertThat(said).contains("2 intact record(s)");
    assertThatTheRecordIsIn(elsewhere);
    assertThat(audit("restore", zip.toString(), "--directory", elsewhere.toString())).isEqualTo(2);
  }

  @Test
  void aChainThatWasExportedComesBackWholeInAnotherPlace() throws Exception {
    Path file = exported();
    Path elsewhere = keysCarriedTo("elsewhere");

    assertThat(audit("restore", file.toString(), "--directory", elsewhere.toString()))
        .as(said)
        .isZero();
    assertThatTheRecordIsIn(elsewhere);
  }

  @Test
  void aChainInPostgresIsExportedByTheCommandAndComesBackWholeInAnotherDatabase() throws Exception {
    try (PostgresServer server = new PostgresServer()) {
      String first = server.emptyDatabaseUrl();
      String second = server.emptyDatabaseUrl();
      Path moved = keysCarriedTo("moved");
      Path file = exported();
      assertThat(restoredTo(first, file, moved)).as(said).isZero();
      Path again = place.resolve("again.ndjson");
      assertThat(audit("export", again.toString(), "--directory", moved.toString(), "--url", first))
          .as(said)
          .isZero();
      Path elsewhere = keysCarriedTo("elsewhere");
      assertThat(restoredTo(second, again, elsewhere)).as(said).isZero();
      assertThat(said).contains("2 intact record(s)");
      assertThat(restoredTo(second, again, elsewhere)).isEqualTo(2);
      assertThat(audit("backup", place.resolve("x.zip").toString(), "--url", first)).isEqualTo(2);
      assertThat(said).contains("pg_dump");
    }
  }

  private int restoredTo(String url, Path file, Path keys) {
    return audit("restore", file.toString(), "--directory", keys.toString(), "--url", url);
  }

  @Test
  void anExportThatWasChangedIsFoundWithThePublicKeyAloneAndIsNotRestored() throws Exception {
    Path file = exported();
    String key = data.resolve("checkpoint.key.pub").toString();
    assertThat(audit("verify", file.toString(), "--public-key", key)).isZero();

    Files.writeString(file, Files.readString(file).replaceFirst("do not run", "run"));
    assertThat(audit("verify", file.toString(), "--public-key", key)).isEqualTo(1);
    assertThat(said).contains("EDITED");
    Path elsewhere = keysCarriedTo("elsewhere");
    assertThat(audit("restore", file.toString(), "--directory", elsewhere.toString())).isEqualTo(1);
  }

  @Test
  void aSavedDatabaseThatLacksWhatTheCheckpointsStateIsNotTakenForWhole() throws Exception {
    Path zip = place.resolve("saved.zip");
    audit("backup", zip.toString(), "--directory", data.toString());
    JdbcConnectionPool database = database(data);
    try (Records records = records(database, data)) {
      records.append(SampleRecords.passed(SEVEN));
    }
    database.dispose();
    Path elsewhere = keysCarriedTo("elsewhere");

    assertThat(audit("restore", zip.toString(), "--directory", elsewhere.toString())).isEqualTo(2);
    assertThat(said).contains("ends at record 2", "states that there were 3");
  }

  @Test
  void nothingIsOverwrittenAndAnUnknownCommandIsReported() throws Exception {
    Path zip = Files.createFile(place.resolve("saved.zip"));
    assertThat(audit("backup", zip.toString(), "--directory", data.toString())).isEqualTo(2);
    assertThat(Files.size(zip)).isZero();

    assertThat(audit()).isEqualTo(2);
    assertThat(audit("fly")).isEqualTo(2);
  }

  private Path exported() {
    Path file = place.resolve("chain.ndjson");
    assertThat(audit("export", file.toString(), "--directory", data.toString())).as(said).isZero();
    return file;
  }

  private Path keysCarriedTo(String name) throws IOException {
    Path elsewhere = Files.createDirectories(place.resolve(name));
    for (String file : List.of("chain.key", "checkpoint.key", "checkpoints.ndjson")) {
      Files.copy(
          data.resolve(file),
          elsewhere.resolve(file),
          java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
    }
    return elsewhere;
  }

  private void assertThatTheRecordIsIn(Path directory) {
    JdbcConnectionPool database = database(directory);
    try (Records records = records(database, directory)) {
      assertThat(records.find(record.id()).orElseThrow().record()).isEqualTo(record);
    } finally {
      database.dispose();
    }
  }

  private int audit(String... arguments) {
    StringWriter text = new StringWriter();
    int code = AuditCommand.run(Standproud.class, List.of(arguments), new PrintWriter(text));
    said = text.toString();
    return code;
  }

  /** As the service opens it: without a user. */
  private static JdbcConnectionPool database(Path directory) {
    return JdbcConnectionPool.create(
        "jdbc:h2:file:" + directory.resolve("standproud") + ";WRITE_DELAY=0", "", "");
  }

  private static Records records(JdbcConnectionPool database, Path directory) {
    KeyPlaces keys = new KeyPlaces(directory);
    return new Records(
        database,
        new ChainKeys(keys.chain().open(), keys.signing().open()),
        keys.checkpoints(),
        Clock.fixed(SEVEN, ZoneOffset.UTC));
  }
}
