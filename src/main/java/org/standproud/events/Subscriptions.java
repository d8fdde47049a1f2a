package org.standproud.events;

import java.net.URI;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Stores subscriptions. */
public final class Subscriptions {

  private final JdbcClient client;

  Subscriptions(DataSource dataSource) {
    this.client = JdbcClient.create(dataSource);
  }

  public void add(Subscription s) {
    String types =
        s.types().stream().map(EventType::code).sorted().collect(Collectors.joining(" "));
    client
        .sql("insert into event_subscription values (?, ?, ?, ?, ?, ?)")
        .params(
            s.id(),
            s.target().toString(),
            types,
            s.secret().text(),
            s.madeBy(),
            s.madeAt().atOffset(ZoneOffset.UTC))
        .update();
  }

  public Optional<Subscription> find(UUID id) {
    return client
        .sql("select * from event_subscription where id = ?")
        .param(id)
        .query(Subscriptions::read)
        .optional();
  }

  public List<Subscription> all() {
    return client
        .sql("select * from event_subscription order by made_at, id")
        .query(Subscriptions::read)
        .list();
  }

  /** Deletes a subscription with its undelivered events. */
  public boolean remove(UUID id) {
    boolean was = client.sql("delete from event_subscription where id = ?").param(id).update() == 1;
    client.sql("delete from event_outbox where subscription = ?").param(id).update();
    return was;
  }

  private static Subscription read(ResultSet row, int number) throws SQLException {
    Set<EventType> types =
        Arrays.stream(row.getString("types").split(" "))
            .flatMap(code -> EventType.of(code).stream())
            .collect(Collectors.toSet());
    return new Subscription(
        row.getObject("id", UUID.class),
        URI.create(row.getString("target")),
        types,
        WebhookSecret.of(row.getString("secret")),
        row.getString("made_by"),
        row.getObject("made_at", OffsetDateTime.class).toInstant());
  }
}
