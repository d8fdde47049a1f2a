package org.standproud.events;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.TaskInstance;
import java.net.URI;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.TransactionAwareDataSourceProxy;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.ChainRecord;
import org.standproud.audit.LogEntry;
import org.standproud.audit.records.AppendListener;
import org.standproud.audit.replay.KeptRuleBase;

/**
 * The outbox of events. An event is inserted, and its sending is scheduled, in the transaction of
 * the record or revision; so it is sent if and only if that was stored, even if the service fails.
 */
public final class Outbox implements AppendListener {

  /** Name of the task that sends a row; its instance is the id of the row. */
  static final String TASK = "send event";

  private final JdbcClient client;
  private final Subscriptions subscriptions;
  private final SchedulerClient scheduler;
  private final URI source;
  private final Clock clock;

  /**
   * Creates the outbox.
   *
   * @param dataSource the database of the records
   * @param subscriptions the subscribers
   * @param source the source attribute of this service
   * @param clock clock for attempts
   */
  Outbox(DataSource dataSource, Subscriptions subscriptions, URI source, Clock clock) {
    this.client = JdbcClient.create(dataSource);
    this.subscriptions = subscriptions;
    // Joins the transaction of the calling thread, like all other writes here.
    this.scheduler =
        SchedulerClient.Builder.create(
                new TransactionAwareDataSourceProxy(dataSource), List.<Task<?>>of())
            .build();
    this.source = source;
    this.clock = clock;
  }

  /** The state of a row. */
  public enum State {
    /** It is sent when it is due. */
    WAITING,
    /** All attempts failed; it is tried again only on request. */
    DEAD;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * An event on its way to one subscriber.
   *
   * @param id its id
   * @param subscription its subscription
   * @param eventId id of the event
   * @param type type of the event
   * @param body the event as sent
   * @param madeAt time of the event
   * @param state whether it is still tried
   * @param tries number of attempts
   * @param triedAt time of the last attempt
   * @param result result of the last attempt
   */
  public record Row(
      UUID id,
      UUID subscription,
      String eventId,
      String type,
      String body,
      Instant madeAt,
      String state,
      int tries,
      @Nullable Instant triedAt,
      @Nullable String result) {

    private static Row read(ResultSet row, int number) throws SQLException {
      OffsetDateTime tried = row.getObject("tried_at", OffsetDateTime.class);
      return new Row(
          row.getObject("id", UUID.class),
          row.getObject("subscription", UUID.class),
          row.getString("event_id"),
          row.getString("event_type"),
          row.getString("body"),
          row.getObject("made_at", OffsetDateTime.class).toInstant(),
          row.getString("state"),
          row.getInt("tries"),
          tried == null ? null : tried.toInstant(),
          row.getString("said"));
    }
  }

  @Override
  public void records(List<ChainRecord> records) {
    List<Subscription> subscribers = subscriptions.all();
    if (!subscribers.isEmpty()) {
      records.stream()
          .filter(record -> !(record instanceof LogEntry)) // Its own log sends the event.
          .forEach(record -> put(Event.of(record), subscribers));
    }
  }

  @Override
  public void ruleBase(KeptRuleBase ruleBase) {
    put(Event.of(ruleBase), subscriptions.all());
  }

  private void put(Event event, List<Subscription> subscribers) {
    for (Subscription subscription : subscribers) {
      if (subscription.types().contains(event.type())) {
        put(event, subscription.id());
      }
    }
  }

  private void put(Event event, UUID subscription) {
    UUID id = AuditRecord.newId();
    Instant now = clock.instant();
    client
        .sql("insert into event_outbox values (?, ?, ?, ?, ?, ?, ?, 0, null, null)")
        .params(
            id,
            subscription,
            event.id(),
            event.type().code(),
            event.json(source),
            now.atOffset(ZoneOffset.UTC),
            State.WAITING.word())
        .update();
    schedule(id, now);
  }

  private void schedule(UUID id, Instant at) {
    scheduler.scheduleIfNotExists(new TaskInstance<Void>(TASK, id.toString()), at);
  }

  public Optional<Row> find(UUID id) {
    return client
        .sql("select * from event_outbox where id = ?")
        .param(id)
        .query(Row::read)
        .optional();
  }

  /** Undelivered events, oldest first. */
  public List<Row> of(UUID subscription, int most) {
    return client
        .sql(
            "select * from event_outbox where subscription = ? order by id"
                + " fetch first "
                + most
                + " rows only")
        .param(subscription)
        .query(Row::read)
        .list();
  }

  public long count(UUID subscription, State state) {
    return client
        .sql("select count(*) from event_outbox where subscription = ? and state = ?")
        .params(subscription, state.word())
        .query(Long.class)
        .single();
  }

  /** It was delivered, or has no subscriber any more. */
  void done(UUID id) {
    client.sql("delete from event_outbox where id = ?").param(id).update();
  }

  void tried(UUID id, String result) {
    client
        .sql("update event_outbox set tries = tries + 1, tried_at = ?, said = ? where id = ?")
        .params(clock.instant().atOffset(ZoneOffset.UTC), result, id)
        .update();
  }

  void giveUp(UUID id) {
    client
        .sql("update event_outbox set state = ? where id = ?")
        .params(State.DEAD.word(), id)
        .update();
  }

  /** Retries a dead row, with the first delay. */
  public boolean revive(UUID id) {
    boolean dead =
        client
                .sql("update event_outbox set state = ?, tries = 0 where id = ? and state = ?")
                .params(State.WAITING.word(), id, State.DEAD.word())
                .update()
            == 1;
    if (dead) {
      schedule(id, clock.instant());
    }
    return dead;
  }

  /** Deletes rows that have been dead for long. */
  void forgetDead(Duration kept) {
    client
        .sql("delete from event_outbox where state = ? and made_at < ?")
        .params(State.DEAD.word(), clock.instant().minus(kept).atOffset(ZoneOffset.UTC))
        .update();
  }
}
