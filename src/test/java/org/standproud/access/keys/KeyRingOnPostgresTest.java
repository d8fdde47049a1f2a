package org.standproud.access.keys;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.IntegrationTest;

@IntegrationTest
class KeyRingOnPostgresTest extends KeyRingContract {

  private static final AtomicInteger DATABASES = new AtomicInteger();
  private static EmbeddedPostgres server;

  @BeforeAll
  static void start() throws IOException {
    server = EmbeddedPostgres.start();
  }

  @AfterAll
  static void stop() throws IOException {
    server.close();
  }

  @Override
  DataSource emptyDatabase() {
    String name = "keys" + DATABASES.incrementAndGet();
    JdbcClient.create(server.getPostgresDatabase()).sql("create database " + name).update();
    return server.getDatabase("postgres", name);
  }
}
