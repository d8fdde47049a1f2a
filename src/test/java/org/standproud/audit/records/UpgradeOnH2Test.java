package org.standproud.audit.records;

import javax.sql.DataSource;
import org.h2.jdbcx.JdbcConnectionPool;
import org.standproud.IntegrationTest;

@IntegrationTest
class UpgradeOnH2Test extends UpgradeContract {

  @Override
  DataSource emptyDatabase() {
    return JdbcConnectionPool.create("jdbc:h2:file:" + directory.resolve("standproud"), "sa", "");
  }
}
