package org.standproud.audit.records;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.SampleRecords;
import org.standproud.audit.chain.KeyPlaces;

/**
 * A service in small: appends without end from several threads, each record with an idempotency key
 * beside it, and says what was acknowledged.
 */
final class AppendsUntilKilled {

  private static final int CALLERS = 8;

  private AppendsUntilKilled() {}

  /** The database that the child appends to and the parent reads again. */
  static JdbcConnectionPool database(Path directory) {
    return JdbcConnectionPool.create(
        "jdbc:h2:file:" + directory.resolve("standproud") + ";WRITE_DELAY=0", "sa", "");
  }

  /** The store on that database. */
  static Records open(JdbcConnectionPool pool, Path directory) {
    Flyway.configure().dataSource(pool).load().migrate();
    return new Records(
        pool,
        new ChainKeys(
            new KeyPlaces(directory).chain().open(), new KeyPlaces(directory).signing().open()),
        new KeyPlaces(directory).checkpoints(),
        Clock.systemUTC());
  }

  /**
   * Appends until the process is ended from outside.
   *
   * @param arguments the directory
   */
  public static void main(String[] arguments) {
    PrintStream acknowledged = System.out;
    System.setOut(System.err);
    Path directory = Path.of(arguments[0]);
    JdbcConnectionPool database = database(directory);
    Records records = open(database, directory);
    JdbcClient keys = JdbcClient.create(database);
    for (int caller = 0; caller < CALLERS; caller++) {
      new Thread(() -> appendWithoutEnd(records, keys, acknowledged)).start();
    }
  }

  private static void appendWithoutEnd(Records records, JdbcClient keys, PrintStream acknowledged) {
    try {
      while (true) {
        AuditRecord record = SampleRecords.stopped("J-1", Instant.now());
        Stored stored = records.append(record, () -> keep(record, keys));
        acknowledged.println(stored.id() + " " + stored.sequence() + " " + stored.seal() + " .");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void keep(AuditRecord record, JdbcClient keys) {
    keys.sql("insert into idempotency_key values ('traveler', ?, 'f', ?, current_timestamp)")
        .params(record.id().toString(), record.id())
        .update();
  }
}
