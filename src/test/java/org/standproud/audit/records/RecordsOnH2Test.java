package org.standproud.audit.records;

import javax.sql.DataSource;
import org.h2.jdbcx.JdbcConnectionPool;
import org.standproud.IntegrationTest;

@IntegrationTest
class RecordsOnH2Test extends RecordsContract {

  @Override
  DataSource emptyDatabase() {
    return JdbcConnectionPool.create(
        "jdbc:h2:file:" + directory.resolve("standproud") + ";WRITE_DELAY=0", "sa", "");
  }
}
