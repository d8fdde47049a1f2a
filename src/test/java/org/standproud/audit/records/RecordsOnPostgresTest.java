package org.standproud.audit.records;

import java.io.IOException;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.standproud.IntegrationTest;

@IntegrationTest
class RecordsOnPostgresTest extends RecordsContract {

  private static PostgresServer server;

  @BeforeAll
  static void start() throws IOException {
    server = new PostgresServer();
  }

  @AfterAll
  static void stop() throws IOException {
    server.close();
  }

  @Override
  DataSource emptyDatabase() {
    return server.emptyDatabase();
  }
}
