package org.standproud.audit.records;

import java.util.UUID;
import javax.sql.DataSource;
import org.h2.jdbcx.JdbcConnectionPool;
import org.standproud.IntegrationTest;

@IntegrationTest
class PeopleAndRetentionOnH2Test extends PeopleAndRetentionContract {

  @Override
  DataSource emptyDatabase() {
    return JdbcConnectionPool.create(
        "jdbc:h2:file:" + directory.resolve("db" + UUID.randomUUID()) + ";WRITE_DELAY=0", "sa", "");
  }
}
