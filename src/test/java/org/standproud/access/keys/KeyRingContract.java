package org.standproud.access.keys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.access.Role;
import org.standproud.access.journal.AccessEntry;
import org.standproud.access.journal.AccessJournal;
import org.standproud.refusal.NotFoundException;
import org.standproud.refusal.Refusal;

/** Keys in the database; run on each kind of database. */
abstract class KeyRingContract {

  private static final Instant SEVEN = Instant.parse("2026-03-02T07:00:00Z");
  private static final Instant SUMMER = Instant.parse("2026-07-01T00:00:00Z");
  private static final Set<Role> CALLER = Set.of(Role.CALLER);

  private DataSource database;
  private AccessJournal journal;
  private KeyRing keys;

  /** An empty database of the kind under test. */
  abstract DataSource emptyDatabase() throws Exception;

  @BeforeEach
  void open() throws Exception {
    database = emptyDatabase();
    Flyway.configure().dataSource(database).load().migrate();
    journal = new AccessJournal(database, at(SEVEN));
    keys = at(SEVEN, journal);
  }

  @AfterEach
  void close() {
    journal.close();
  }

  private static Clock at(Instant time) {
    return Clock.fixed(time, ZoneOffset.UTC);
  }

  private KeyRing at(Instant time, AccessJournal journal) {
    return new KeyRing(database, journal, at(time));
  }

  private int entries(String kind) {
    return JdbcClient.create(database)
        .sql("select count(*) from access_entry where kind = ?")
        .param(kind)
        .query(Integer.class)
        .single();
  }

  @Test
  void theHolderIsKnownUntilTheKeyExpires() throws Exception {
    KeyRing.Issued issued = keys.make("mill 4", CALLER, SUMMER, "operator");
    assertThat(keys.open(issued.text().text()).name()).isEqualTo("mill 4");
    assertThat(at(SUMMER.minusSeconds(1), journal).stillOpen(issued.key().id())).isTrue();
    assertThatThrownBy(() -> at(SUMMER, journal).open(issued.text().text()))
        .isInstanceOf(KeyRefused.class)
        .hasMessageContaining("expired");
    assertThat(at(SUMMER, journal).stillOpen(issued.key().id())).isFalse();
  }

  @Test
  void theSecretIsNowhereInTheDatabase() {
    KeyRing.Issued issued = keys.make("mill 4", CALLER, SUMMER, "operator");
    String rows =
        JdbcClient.create(database).sql("select * from api_key").query().listOfRows().toString()
            + JdbcClient.create(database).sql("select * from access_entry").query().listOfRows();
    assertThat(rows).contains(issued.key().id()).doesNotContain(issued.text().secret());
    assertThat(issued.text().toString()).doesNotContain(issued.text().secret());
  }

  @Test
  void aReplacedKeyNeverOutlivesWhatItWasMadeFor() throws Exception {
    KeyRing.Issued old = keys.make("mill 4", CALLER, SEVEN.plus(Duration.ofDays(1)), "operator");
    KeyRing.Issued next = keys.rotate(old.key().id(), Duration.ofDays(30), SUMMER, "operator");
    assertThat(next.key().replaces()).isEqualTo(old.key().id());
    assertThat(next.key().roles()).isEqualTo(CALLER);
    KeyRing later = at(SEVEN.plus(Duration.ofDays(2)), journal);
    assertThat(later.stillOpen(old.key().id())).isFalse();
    assertThat(later.open(next.text().text()).name()).isEqualTo("mill 4");
    assertThat(entries("key rotated")).isEqualTo(1);
  }

  @Test
  void ofTwoOperatorsWhoRotateTheSameKeyAtOnceOneIsRefused() throws Exception {
    String id = keys.make("mill 4", CALLER, SUMMER, "operator").key().id();
    ExecutorService operators = Executors.newFixedThreadPool(4);
    List<Future<KeyRing.Issued>> tries = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      tries.add(operators.submit(() -> keys.rotate(id, Duration.ofDays(1), SUMMER, "operator")));
    }
    int refused = 0;
    for (Future<KeyRing.Issued> one : tries) {
      try {
        one.get();
      } catch (ExecutionException e) {
        assertThat(e.getCause()).isInstanceOf(Refusal.class);
        refused++;
      }
    }
    operators.shutdown();
    assertThat(refused).isEqualTo(3);
    assertThat(keys.all()).hasSize(2);
  }

  @Test
  void whatCannotBeDoneWithAKeyIsRefusedAndLeavesNoTrace() {
    KeyRing.Issued key = keys.make("mill 4", CALLER, SUMMER, "operator");
    assertThatThrownBy(() -> keys.revoke("0000000000000000", "operator"))
        .isInstanceOf(NotFoundException.class);
    assertThatThrownBy(() -> keys.rotate(key.key().id(), Duration.ofDays(31), SUMMER, "operator"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> keys.rotate(key.key().id(), Duration.ofDays(1), SEVEN, "operator"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(keys.all()).containsExactly(key.key());
    keys.revoke(key.key().id(), "operator");
    keys.revoke(key.key().id(), "operator");
    assertThat(entries("key revoked")).isEqualTo(1);
    assertThat(keys.anyOpenFor(Role.CALLER)).isFalse();
  }

  @Test
  void aFloodOfDeniedCallsIsAFewRows() {
    for (int i = 0; i < 5_000; i++) {
      journal.denied(
          new AccessEntry.About(
              null, null, "10.0.0." + i % 3, "GET", "/v1/rules/**", 401, "No key was sent."));
    }
    journal.writeDenied();
    assertThat(entries("denied")).isEqualTo(3);
    assertThat(
            JdbcClient.create(database)
                .sql("select sum(times) from access_entry")
                .query(Integer.class)
                .single())
        .isEqualTo(5_000);
    for (int i = 0; i < 3_000; i++) {
      journal.denied(
          new AccessEntry.About(
              null,
              null,
              "10.1." + i / 250 + "." + i % 250,
              "GET",
              "/**",
              401,
              "No key was sent."));
    }
    journal.writeDenied();
    assertThat(entries("denied")).isEqualTo(3 + 1_000 + 1);
  }

  @Test
  void oldEntriesOfTheJournalGoWithAnEntryThatSaysSo() {
    keys.make("mill 4", CALLER, SUMMER, "operator");
    journal.cut(SEVEN);
    assertThat(entries("key made")).isEqualTo(1);
    journal.cut(SEVEN.plusSeconds(1));
    assertThat(entries("key made")).isZero();
    assertThat(entries("entries removed")).isEqualTo(1);
  }
}
