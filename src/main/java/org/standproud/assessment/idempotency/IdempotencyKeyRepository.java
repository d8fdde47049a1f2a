package org.standproud.assessment.idempotency;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Stores keys until they expire. */
public final class IdempotencyKeyRepository {

  private final JdbcClient client;
  private final Duration kept;
  private final Clock clock;

  /**
   * Creates the repository.
   *
   * @param dataSource the database of the records
   * @param kept how long a key is stored
   * @param clock clock for expiry
   */
  public IdempotencyKeyRepository(DataSource dataSource, Duration kept, Clock clock) {
    this.client = JdbcClient.create(dataSource);
    this.kept = kept;
    this.clock = clock;
  }

  /**
   * A stored key.
   *
   * @param fingerprint SHA-256 of the request in canonical form
   * @param record id of its answer
   */
  record Entry(String fingerprint, UUID record) {

    private static Entry read(ResultSet row, int number) throws SQLException {
      return new Entry(row.getString(1), row.getObject(2, UUID.class));
    }
  }

  Optional<Entry> find(IdempotencyKey key) {
    return client
        .sql(
            "select fingerprint, record_id from idempotency_key"
                + " where caller = ? and idempotency_key = ? and expires_at > ?")
        .params(key.caller(), key.value(), now())
        .query(Entry::read)
        .optional();
  }

  /**
   * Stores a key, in the transaction of its record. An expired key is replaced.
   *
   * @throws org.springframework.dao.DuplicateKeyException if it already has an answer
   */
  void keep(IdempotencyKey key, Entry entry) {
    OffsetDateTime now = now();
    client
        .sql(
            "delete from idempotency_key"
                + " where caller = ? and idempotency_key = ? and expires_at <= ?")
        .params(key.caller(), key.value(), now)
        .update();
    client
        .sql("insert into idempotency_key values (?, ?, ?, ?, ?)")
        .params(key.caller(), key.value(), entry.fingerprint(), entry.record(), now.plus(kept))
        .update();
  }

  /**
   * Deletes expired keys.
   *
   * @return how many
   */
  public int forgetExpired() {
    return client.sql("delete from idempotency_key where expires_at <= ?").param(now()).update();
  }

  private OffsetDateTime now() {
    return clock.instant().atOffset(ZoneOffset.UTC);
  }
}
