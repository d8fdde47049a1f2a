package org.standproud.audit.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standproud.IntegrationTest;
import org.standproud.audit.RecordType;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.chain.Link;

/**
 * The tables on an empty database; {@link RecordsContract} tests them with records, on H2 and on
 * PostgreSQL.
 */
@IntegrationTest
class RecordTablesTest {

  private RecordTables tables;

  @BeforeEach
  void migrate() {
    DataSource database =
        JdbcConnectionPool.create(
            "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "", "");
    Flyway.configure().dataSource(database).load().migrate();
    tables = new RecordTables(database);
  }

  @Test
  void anEmptyChainBelongsToNoKeyUntilOneClaimsItAndThenToThatKeyForGood() {
    assertThat(tables.head().keyId()).isNull();
    tables.claim("first");
    tables.claim("second");
    assertThat(tables.head().keyId()).isEqualTo("first");
  }

  @Test
  void theHeadMovesWithTheLastRecord() {
    RecordTables.Head empty = tables.head();
    assertThat(empty.sequence()).isZero();
    tables.moveHead(
        new Link(7, empty.seal(), "seal of seven", CanonicalJson.parse("{}"), null),
        "digest of seven");
    assertThat(tables.lockHead())
        .isEqualTo(new RecordTables.Head(null, 7, "seal of seven", "digest of seven"));
    tables.setDigest("another digest");
    assertThat(tables.head().known()).isEqualTo("another digest");
  }

  @Test
  void anEmptyTableHasNoRows() {
    assertThat(tables.find(UUID.randomUUID())).isEmpty();
    assertThat(tables.rows(0, Long.MAX_VALUE, 10)).isEmpty();
    assertThat(tables.about(RecordType.ACCEPTANCE, UUID.randomUUID())).isEmpty();
    assertThat(tables.findingsByRecord(0, Long.MAX_VALUE)).isEmpty();
    assertThat(tables.answers(0, Long.MAX_VALUE)).isEmpty();
  }
}
