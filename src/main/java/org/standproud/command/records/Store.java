package org.standproud.command.records;

import java.nio.file.Path;
import java.time.Clock;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.standproud.assessment.SetupInShort;
import org.standproud.audit.chain.ChainReport;
import org.standproud.audit.chain.CheckpointFile;
import org.standproud.audit.chain.KeyPlaces;
import org.standproud.audit.records.AppendListener;
import org.standproud.audit.records.ChainKeys;
import org.standproud.audit.records.Records;
import picocli.CommandLine.Option;

/**
 * The location of the records. An embedded database can be opened only while the service is
 * stopped.
 */
final class Store {

  @Option(
      names = "--directory",
      defaultValue = "./data",
      paramLabel = "DIR",
      description = "audit directory, with the keys (${DEFAULT-VALUE})")
  private Path directory = Path.of("data");

  @Option(
      names = "--checkpoints",
      paramLabel = "FILE",
      description = "checkpoints, where they are not in the audit directory")
  private @Nullable Path checkpoints;

  @Option(
      names = "--url",
      defaultValue = "${env:SPRING_DATASOURCE_URL}",
      paramLabel = "JDBC",
      description = "database; without it the files in the audit directory")
  private @Nullable String url;

  @Option(
      names = "--user",
      defaultValue = "${env:SPRING_DATASOURCE_USERNAME}",
      description = "database user; the password is taken from SPRING_DATASOURCE_PASSWORD")
  private @Nullable String user;

  Path directory() {
    return directory;
  }

  boolean inFiles() {
    return url == null;
  }

  /** The database file. */
  Path file() {
    return directory.resolve("standproud.mv.db");
  }

  DataSource dataSource() {
    String place = directory.toAbsolutePath().resolve("standproud").toString();
    DriverManagerDataSource source =
        new DriverManagerDataSource(url == null ? "jdbc:h2:file:" + place + ";WRITE_DELAY=0" : url);
    if (user != null) {
      source.setUsername(user);
    }
    String password = System.getenv("SPRING_DATASOURCE_PASSWORD");
    if (password != null) {
      source.setPassword(password);
    }
    return source;
  }

  void migrate() {
    Flyway.configure().dataSource(dataSource()).load().migrate();
  }

  ChainKeys seal() {
    KeyPlaces keys = new KeyPlaces(directory);
    return new ChainKeys(keys.chain().open(), keys.signing().open());
  }

  CheckpointFile checkpoints() {
    return checkpoints == null
        ? new KeyPlaces(directory).checkpoints()
        : new CheckpointFile(checkpoints);
  }

  Records records() {
    return new Records(
        dataSource(),
        seal(),
        checkpoints(),
        Clock.systemUTC(),
        AppendListener.NOTHING,
        new SetupInShort());
  }

  ChainReport verify() {
    try (Records records = records()) {
      return records.verify();
    }
  }
}
