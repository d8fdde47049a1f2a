package org.standproud.access.keys;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.access.Role;

/** The table of keys. */
final class KeyTable {

  private static final String BETWEEN = ",";

  private final JdbcClient client;

  KeyTable(DataSource dataSource) {
    this.client = JdbcClient.create(dataSource);
  }

  /**
   * A key with the digest of its secret.
   *
   * @param key the key
   * @param digest SHA-256 of its secret
   */
  record Row(ApiKey key, String digest) {}

  void insert(ApiKey key, String digest) {
    client
        .sql(
            "insert into api_key (id, caller, roles, digest, made_at, made_by, expires_at, replaces)"
                + " values (?, ?, ?, ?, ?, ?, ?, ?)")
        .params(
            key.id(),
            key.caller(),
            key.roles().stream().map(Role::name).sorted().collect(Collectors.joining(BETWEEN)),
            digest,
            utc(key.madeAt()),
            key.madeBy(),
            utc(key.expiresAt()))
        .param(key.replaces())
        .update();
  }

  Optional<Row> find(String id) {
    return client
        .sql("select * from api_key where id = ?")
        .param(id)
        .query(KeyTable::read)
        .optional();
  }

  /** The same, and locks the row until the transaction ends. */
  Optional<Row> lock(String id) {
    return client
        .sql("select * from api_key where id = ? for update")
        .param(id)
        .query(KeyTable::read)
        .optional();
  }

  boolean isReplaced(String id) {
    return client
            .sql("select count(*) from api_key where replaces = ?")
            .param(id)
            .query(Integer.class)
            .single()
        > 0;
  }

  List<ApiKey> all() {
    return client
        .sql("select * from api_key order by made_at, id")
        .query(KeyTable::read)
        .list()
        .stream()
        .map(Row::key)
        .toList();
  }

  void expire(String id, Instant at) {
    client.sql("update api_key set expires_at = ? where id = ?").params(utc(at), id).update();
  }

  void revoke(String id, Instant at) {
    client.sql("update api_key set revoked_at = ? where id = ?").params(utc(at), id).update();
  }

  private static Row read(ResultSet rs, int number) throws SQLException {
    ApiKey key =
        new ApiKey(
            rs.getString("id"),
            rs.getString("caller"),
            roles(rs.getString("roles")),
            time(rs, "made_at"),
            rs.getString("made_by"),
            time(rs, "expires_at"),
            optionalTime(rs, "revoked_at"),
            rs.getString("replaces"));
    return new Row(key, rs.getString("digest"));
  }

  private static Set<Role> roles(String names) {
    return Arrays.stream(names.split(BETWEEN)).map(Role::valueOf).collect(Collectors.toSet());
  }

  private static Instant time(ResultSet rs, String column) throws SQLException {
    return rs.getObject(column, OffsetDateTime.class).toInstant();
  }

  private static @Nullable Instant optionalTime(ResultSet rs, String column) throws SQLException {
    OffsetDateTime time = rs.getObject(column, OffsetDateTime.class);
    return time == null ? null : time.toInstant();
  }

  private static OffsetDateTime utc(Instant time) {
    return time.atOffset(ZoneOffset.UTC);
  }
}
