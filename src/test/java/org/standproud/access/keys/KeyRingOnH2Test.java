package org.standproud.access.keys;

import java.util.UUID;
import javax.sql.DataSource;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.standproud.IntegrationTest;

@IntegrationTest
class KeyRingOnH2Test extends KeyRingContract {

  @Override
  DataSource emptyDatabase() {
    return new DriverManagerDataSource("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
  }
}
