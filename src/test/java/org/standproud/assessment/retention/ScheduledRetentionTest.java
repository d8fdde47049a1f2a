package org.standproud.assessment.retention;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.Period;
import java.time.ZoneOffset;
import java.util.UUID;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.standproud.IntegrationTest;
import org.standproud.access.journal.AccessEntry;
import org.standproud.access.journal.AccessJournal;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.SampleRecords;
import org.standproud.audit.chain.KeyPlaces;
import org.standproud.audit.records.ChainKeys;
import org.standproud.audit.records.Records;
import org.standproud.audit.records.Retention;

/** What goes by the clock goes on time, and on record. */
@IntegrationTest
class ScheduledRetentionTest {

  private static final Instant SEVEN = Instant.parse("2026-03-02T07:00:00Z");
  private static final Clock CLOCK = Clock.fixed(SEVEN, ZoneOffset.UTC);

  private @TempDir Path directory;
  private final DataSource database =
      new DriverManagerDataSource("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");

  private int entries(String kind) {
    return JdbcClient.create(database)
        .sql("select count(*) from access_entry where kind = ?")
        .param(kind)
        .query(Integer.class)
        .single();
  }

  private void keepTheRule(ScheduledRetention.Rule rule, Records records, AccessJournal journal)
      throws InterruptedException {
    new ScheduledRetention(new Retention(records, CLOCK), journal, rule, CLOCK, () -> 0)
        .keepTheRule();
  }

  @Test
  void aClockThatJumpedSinceTheServiceStartedTakesNothing() throws Exception {
    Flyway.configure().dataSource(database).load().migrate();
    KeyPlaces keys = new KeyPlaces(directory);
    ChainKeys seal = new ChainKeys(keys.chain().open(), keys.signing().open());
    ScheduledRetention.Rule year =
        new ScheduledRetention.Rule(Period.ofYears(1), Mask.ACCOUNT, Period.ofYears(1));
    Instant[] now = {SEVEN};
    Duration[] passed = {Duration.ZERO};
    Clock moved = mock(Clock.class);
    when(moved.instant()).thenAnswer(asked -> now[0]);
    try (Records records = new Records(database, seal, keys.checkpoints(), CLOCK);
        AccessJournal journal = new AccessJournal(database, CLOCK)) {
      AuditRecord fresh = SampleRecords.stopped("J-1", SEVEN);
      records.append(fresh);
      ScheduledRetention kept =
          new ScheduledRetention(
              new Retention(records, CLOCK), journal, year, moved, () -> passed[0].toNanos());
      now[0] = SEVEN.plus(Duration.ofDays(400));
      kept.keepTheRule();
      assertThat(records.find(fresh.id()).orElseThrow().whole()).isTrue();

      passed[0] = Duration.ofDays(400);
      kept.keepTheRule();
      assertThat(records.find(fresh.id()).orElseThrow().gone()).as("time did pass").isTrue();
    }
  }

  @Test
  void whatIsOlderThanTheRuleLosesItsTextAndTheRestStays() throws Exception {
    Flyway.configure().dataSource(database).load().migrate();
    KeyPlaces keys = new KeyPlaces(directory);
    ChainKeys seal = new ChainKeys(keys.chain().open(), keys.signing().open());
    Clock twoYearsAgo = Clock.offset(CLOCK, Duration.ofDays(-735));
    try (Records records = new Records(database, seal, keys.checkpoints(), CLOCK);
        AccessJournal journal = new AccessJournal(database, twoYearsAgo)) {
      AuditRecord old = SampleRecords.stopped("J-1", twoYearsAgo.instant());
      AuditRecord young = SampleRecords.stopped("J-2", SEVEN.minus(Duration.ofDays(700)));
      records.append(old);
      records.append(young);
      journal.write(AccessEntry.Kind.SIGNED_IN, AccessEntry.About.key("A. Reed", null, "long ago"));

      keepTheRule(new ScheduledRetention.Rule(null, Mask.ACCOUNT, null), records, journal);
      assertThat(records.find(old.id()).orElseThrow().whole()).isTrue();
      assertThat(entries("signed in")).isEqualTo(1);

      ScheduledRetention.Rule twoYears =
          new ScheduledRetention.Rule(Period.ofYears(2), Mask.ACCOUNT, Period.ofYears(2));
      keepTheRule(twoYears, records, journal);
      keepTheRule(twoYears, records, journal);
      assertThat(records.find(old.id()).orElseThrow().gone()).isTrue();
      assertThat(records.find(young.id()).orElseThrow().whole()).isTrue();
      assertThat(records.verify().intact()).as("two answers, one withholding").isEqualTo(3);
      assertThat(records.verify().whole()).isTrue();
      assertThat(entries("signed in")).isZero();
      assertThat(entries("entries removed")).isEqualTo(1);
    }
  }
}
