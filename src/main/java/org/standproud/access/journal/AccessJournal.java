package org.standproud.access.journal;

import com.github.f4b6a3.uuid.UuidCreator;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.scheduling.annotation.Scheduled;

/**
 * Stores the access journal. Key changes are written at once; denied calls are counted and written
 * every few seconds, equal ones as one row, so that a flood of them fills neither disk nor
 * database. A crash loses at most the count of the last seconds.
 */
public final class AccessJournal implements AutoCloseable {

  /**
   * Most kinds of denied calls counted separately between two writes; further kinds are counted
   * together.
   */
  static final int MOST_APART = 1_000;

  private static final Logger LOG = LoggerFactory.getLogger(AccessJournal.class);
  private static final AccessEntry.About OTHERS =
      new AccessEntry.About(null, null, null, null, null, null, "denied calls of other kinds");

  private final JdbcClient client;
  private final Clock clock;
  private final Map<AccessEntry.About, Tally> denied = new LinkedHashMap<>();

  /** The count of a denied call. */
  private record Tally(Instant first, Instant last, int times) {

    Tally with(Tally more) {
      return new Tally(first, more.last, times + more.times);
    }
  }

  /**
   * Opens the journal.
   *
   * @param dataSource a database with its table
   * @param clock clock for entries
   */
  public AccessJournal(DataSource dataSource, Clock clock) {
    this.client = JdbcClient.create(dataSource);
    this.clock = clock;
  }

  /**
   * Writes a key change, within the caller's transaction if there is one.
   *
   * @param kind the change
   * @param about caller and key
   */
  public void write(AccessEntry.Kind kind, AccessEntry.About about) {
    Instant now = clock.instant();
    insert(kind, about, new Tally(now, now, 1));
  }

  /**
   * Counts a denied call.
   *
   * @param about caller and address
   */
  public void denied(AccessEntry.About about) {
    Instant now = clock.instant();
    Tally once = new Tally(now, now, 1);
    synchronized (denied) {
      boolean room = denied.size() < MOST_APART || denied.containsKey(about);
      denied.merge(room ? about : OTHERS, once, Tally::with);
    }
  }

  /** Writes the denied calls counted so far; called every few seconds. */
  @Scheduled(initialDelayString = "PT5S", fixedDelayString = "PT5S")
  public void writeDenied() {
    Map<AccessEntry.About, Tally> counted;
    synchronized (denied) {
      counted = new LinkedHashMap<>(denied);
      denied.clear();
    }
    counted.forEach(
        (about, tally) -> {
          try {
            insert(AccessEntry.Kind.DENIED, about, tally);
          } catch (RuntimeException e) {
            LOG.error("{} denied call(s) could not be written to the journal", tally.times, e);
          }
        });
  }

  /**
   * Deletes old entries, and adds an entry about it.
   *
   * @param before entries that ended before this time
   */
  public void cut(Instant before) {
    int taken =
        client.sql("delete from access_entry where last_at < ?").param(utc(before)).update();
    if (taken > 0) {
      write(
          AccessEntry.Kind.ENTRIES_REMOVED,
          new AccessEntry.About(
              null, null, null, null, null, null, taken + " entries before " + before));
    }
  }

  /**
   * Lists entries, newest first.
   *
   * @param query the query
   * @param most most entries to return
   */
  public List<AccessEntry> list(JournalQuery query, int most) {
    return client
        .sql(
            "select * from access_entry where "
                + query.condition()
                + " order by id desc fetch first "
                + most
                + " rows only")
        .params(query.values())
        .query(AccessJournal::read)
        .list();
  }

  /** Writes what is counted, and stops. */
  @Override
  public void close() {
    writeDenied();
  }

  private void insert(AccessEntry.Kind kind, AccessEntry.About about, Tally tally) {
    client
        .sql(
            "insert into access_entry (id, kind, first_at, last_at, times, caller, key_id, address,"
                + " method, place, status, note) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
        .params(
            UuidCreator.getTimeOrderedEpoch(),
            kind.words(),
            utc(tally.first),
            utc(tally.last),
            tally.times)
        .param(about.caller())
        .param(about.keyId())
        .param(about.address())
        .param(about.method())
        .param(about.place())
        .param(about.status())
        .param(about.note())
        .update();
  }

  private static AccessEntry read(ResultSet rs, int number) throws SQLException {
    return new AccessEntry(
        rs.getObject("id", UUID.class),
        kind(rs.getString("kind")),
        rs.getObject("first_at", OffsetDateTime.class).toInstant(),
        rs.getObject("last_at", OffsetDateTime.class).toInstant(),
        rs.getInt("times"),
        new AccessEntry.About(
            rs.getString("caller"),
            rs.getString("key_id"),
            rs.getString("address"),
            rs.getString("method"),
            rs.getString("place"),
            rs.getObject("status", Integer.class),
            rs.getString("note")));
  }

  private static AccessEntry.Kind kind(String words) {
    for (AccessEntry.Kind kind : AccessEntry.Kind.values()) {
      if (kind.words().equals(words)) {
        return kind;
      }
    }
    throw new IllegalStateException("unknown kind in the journal: " + words);
  }

  private static OffsetDateTime utc(Instant time) {
    return time.atOffset(ZoneOffset.UTC);
  }
}
