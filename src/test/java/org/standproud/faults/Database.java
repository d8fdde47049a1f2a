package org.standproud.faults;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A PostgreSQL that can be stopped and started again on what it had, at the same address. */
final class Database implements AutoCloseable {

  private static final String NAME = "standproud";

  private final Path folder;
  private final int port;
  private EmbeddedPostgres server;

  Database(Path folder, int port) throws IOException {
    this.folder = folder;
    this.port = port;
    start();
    JdbcClient.create(server.getPostgresDatabase()).sql("create database " + NAME).update();
  }

  void start() throws IOException {
    server =
        EmbeddedPostgres.builder()
            .setDataDirectory(folder)
            .setCleanDataDirectory(false)
            .setPort(port)
            .start();
  }

  /** Stops it; who is connected is thrown out. */
  void stop() throws IOException {
    server.close();
  }

  /** The setting of a service on it. */
  String setting() {
    return "--spring.datasource.url=jdbc:postgresql://127.0.0.1:"
        + port
        + "/"
        + NAME
        + "?user=postgres";
  }

  /** Looks into it. */
  JdbcClient look() {
    return JdbcClient.create(server.getDatabase("postgres", NAME));
  }

  @Override
  public void close() throws IOException {
    stop();
  }
}
