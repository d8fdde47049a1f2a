package org.standproud.audit.records;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A PostgreSQL of the tests' own, with as many empty databases as are asked for. */
public final class PostgresServer implements AutoCloseable {

  private final AtomicInteger databases = new AtomicInteger();
  private final EmbeddedPostgres server;

  /** Starts it. */
  public PostgresServer() throws IOException {
    server =
        EmbeddedPostgres.builder()
            // No test of it pulls the plug, so nothing has to reach the disk.
            .setServerConfig("fsync", "off")
            .setServerConfig("synchronous_commit", "off")
            .setServerConfig("full_page_writes", "off")
            .start();
  }

  /** An empty database. */
  public DataSource emptyDatabase() {
    return server.getDatabase("postgres", fresh());
  }

  /** Address of an empty database. */
  public String emptyDatabaseUrl() {
    return server.getJdbcUrl("postgres", fresh());
  }

  private String fresh() {
    String name = "standproud" + databases.incrementAndGet();
    JdbcClient.create(server.getPostgresDatabase()).sql("create database " + name).update();
    return name;
  }

  @Override
  public void close() throws IOException {
    server.close();
  }
}
