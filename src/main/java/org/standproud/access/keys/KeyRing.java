package org.standproud.access.keys;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.standproud.access.Caller;
import org.standproud.access.Role;
import org.standproud.access.journal.AccessEntry;
import org.standproud.access.journal.AccessJournal;
import org.standproud.refusal.NotFoundException;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;

/**
 * The keys of the service. Each call looks its key up in the database, so a key revoked at one
 * replica is invalid at all.
 */
public final class KeyRing {

  /** Longest validity of a key. Common practice, no source. */
  public static final Duration LONGEST = Duration.ofDays(366);

  /** Longest time that a key and its replacement are both valid. */
  public static final Duration LONGEST_OVERLAP = Duration.ofDays(30);

  private final KeyTable table;
  private final TransactionTemplate transaction;
  private final AccessJournal journal;
  private final Clock clock;

  /**
   * Creates the store.
   *
   * @param dataSource a database with their table
   * @param journal records key changes
   * @param clock clock for expiry
   */
  public KeyRing(DataSource dataSource, AccessJournal journal, Clock clock) {
    this.table = new KeyTable(dataSource);
    this.transaction = new TransactionTemplate(new JdbcTransactionManager(dataSource));
    this.journal = journal;
    this.clock = clock;
  }

  /**
   * A new key.
   *
   * @param key the key as stored
   * @param text the bearer token; returned only once and never stored
   */
  public record Issued(ApiKey key, KeyText text) {}

  /**
   * Creates a key.
   *
   * @param caller name of the caller
   * @param roles roles of the caller, at least one
   * @param expires expiry, at most {@link #LONGEST} ahead
   * @param by its creator
   * @throws IllegalArgumentException if one of these is invalid
   */
  public Issued make(String caller, Set<Role> roles, Instant expires, String by) {
    CallerName.check(caller);
    return inTransaction(
        () -> {
          Issued issued = insert(caller, roles, expires, by, null);
          note(AccessEntry.Kind.KEY_MADE, by, issued.key(), "until " + issued.key().expiresAt());
          return issued;
        });
  }

  /**
   * Creates a key that replaces another after an overlap.
   *
   * @param id the key to replace
   * @param overlap how long it stays valid, at most {@link #LONGEST_OVERLAP} and never past its
   *     expiry
   * @param expires expiry of the new key
   * @param by its creator
   * @throws NotFoundException if there is no such key
   * @throws Refusal if it is replaced already, or invalid
   */
  public Issued rotate(String id, Duration overlap, Instant expires, String by) {
    if (overlap.isNegative() || overlap.compareTo(LONGEST_OVERLAP) > 0) {
      throw new IllegalArgumentException(
          "overlap is at most " + LONGEST_OVERLAP.toDays() + " days, and not negative");
    }
    return inTransaction(
        () -> {
          ApiKey old = locked(id);
          Instant now = now();
          String closed = old.closed(now);
          if (closed != null) {
            throw new Refusal(RefusalKind.CONFLICT, closed + " Create a new one.");
          }
          if (table.isReplaced(id)) {
            throw new Refusal(
                RefusalKind.CONFLICT, "The key is being replaced already; rotate its replacement.");
          }
          Issued issued = insert(old.caller(), old.roles(), expires, by, id);
          Instant end = now.plus(overlap);
          table.expire(id, end.isBefore(old.expiresAt()) ? end : old.expiresAt());
          note(AccessEntry.Kind.KEY_ROTATED, by, old, "by key " + issued.key().id());
          return issued;
        });
  }

  /**
   * Revokes a key; it is invalid from now on. A revoked key stays as it is.
   *
   * @param id the key
   * @param by who revokes it
   * @throws NotFoundException if there is no such key
   */
  public void revoke(String id, String by) {
    inTransaction(
        () -> {
          ApiKey key = locked(id);
          if (key.revokedAt() == null) {
            table.revoke(id, now());
            note(AccessEntry.Kind.KEY_REVOKED, by, key, "revoked");
          }
          return id;
        });
  }

  /** Every key, oldest first. */
  public List<ApiKey> all() {
    return table.all();
  }

  /** Whether some key of this role is valid now. */
  public boolean anyOpenFor(Role role) {
    Instant now = now();
    return all().stream().anyMatch(k -> k.roles().contains(role) && k.closed(now) == null);
  }

  /**
   * Authenticates a key.
   *
   * @param shown the text sent
   * @throws KeyRefused if it is invalid
   */
  public Caller open(String shown) throws KeyRefused {
    KeyText text =
        KeyText.read(shown)
            .orElseThrow(() -> refused("This is not the format of a" + " key.", null));
    KeyTable.Row row =
        table.find(text.id()).orElseThrow(() -> refused("There is no such key.", null));
    if (!text.has(row.digest())) {
      throw refused("There is no such key.", row.key().id());
    }
    String closed = row.key().closed(now());
    if (closed != null) {
      throw refused(closed, row.key().id());
    }
    return row.key().holder();
  }

  /**
   * Whether an authenticated key is still valid.
   *
   * @param id the key
   */
  public boolean stillOpen(String id) {
    Optional<KeyTable.Row> row = table.find(id);
    return row.isPresent() && row.get().key().closed(now()) == null;
  }

  private static KeyRefused refused(String reason, @Nullable String keyId) {
    return new KeyRefused(reason, keyId);
  }

  private Issued insert(
      String caller, Set<Role> roles, Instant expires, String by, @Nullable String replaces) {
    Instant now = now();
    Instant end = expires.truncatedTo(ChronoUnit.MICROS);
    if (roles.isEmpty()) {
      throw new IllegalArgumentException("roles is empty");
    }
    if (!end.isAfter(now) || end.isAfter(now.plus(LONGEST))) {
      throw new IllegalArgumentException(
          "expires must be in the future, at most " + LONGEST.toDays() + " days after");
    }
    KeyText text = KeyText.random();
    ApiKey key = new ApiKey(text.id(), caller, roles, now, by, end, null, replaces);
    table.insert(key, text.digest());
    return new Issued(key, text);
  }

  private ApiKey locked(String id) {
    return table
        .lock(id)
        .map(KeyTable.Row::key)
        .orElseThrow(() -> new NotFoundException("No key has this id."));
  }

  private void note(AccessEntry.Kind kind, String by, ApiKey key, String what) {
    journal.write(
        kind, AccessEntry.About.key(by, key.id(), "key of " + key.caller() + ", " + what));
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }

  private <T> T inTransaction(Supplier<T> work) {
    return transaction.execute(status -> work.get());
  }
}
