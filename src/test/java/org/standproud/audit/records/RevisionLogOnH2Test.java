package org.standproud.audit.records;

import java.nio.file.Path;
import javax.sql.DataSource;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;

@IntegrationTest
class RevisionLogOnH2Test extends RevisionLogContract {

  private @TempDir Path directory;

  @Override
  DataSource emptyDatabase() {
    return JdbcConnectionPool.create(
        "jdbc:h2:file:" + directory.resolve("standproud") + ";WRITE_DELAY=0", "sa", "");
  }
}
