package org.standproud.assessment.retention;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.Period;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.standproud.access.journal.AccessJournal;
import org.standproud.audit.Mask;
import org.standproud.audit.Person;
import org.standproud.audit.records.RecordQuery;
import org.standproud.audit.records.Retention;

/**
 * Removes old texts on a schedule, if the shop has a retention rule. Removals from records are
 * recorded in their chain, those from the access journal in the journal.
 */
@Component
@ConditionalOnWebApplication(type = ConditionalOnWebApplication.Type.SERVLET)
class ScheduledRetention {

  private static final Logger LOG = LoggerFactory.getLogger(ScheduledRetention.class);
  private static final Person SERVICE = new Person("the service, on schedule", "operator");

  /** Largest correction of the clock that is accepted. Common practice, no source. */
  private static final Duration BELIEVED = Duration.ofHours(2);

  private final Retention records;
  private final AccessJournal journal;
  private final Rule rule;
  private final Clock clock;
  private final LongSupplier steady;
  private final Instant startedAt;
  private final long startedNanos;

  /**
   * The retention rule.
   *
   * @param recordsFor how long records keep their texts; null to keep them without limit
   * @param mask what is removed from them then
   * @param journalFor how long the journal of access is kept; null to keep them without limit
   */
  record Rule(@Nullable Period recordsFor, Mask mask, @Nullable Period journalFor) {}

  @Autowired
  ScheduledRetention(Retention records, AccessJournal journal, RetentionProperties properties) {
    this(
        records,
        journal,
        new Rule(properties.records(), properties.mask(), properties.journal()),
        Clock.systemUTC(),
        System::nanoTime);
  }

  /**
   * Creates the task.
   *
   * @param clock clock for ages
   * @param steady monotonic nanoseconds, to check the clock
   */
  ScheduledRetention(
      Retention records, AccessJournal journal, Rule rule, Clock clock, LongSupplier steady) {
    this.records = records;
    this.journal = journal;
    this.rule = rule;
    this.clock = clock;
    this.steady = steady;
    this.startedAt = clock.instant();
    this.startedNanos = steady.getAsLong();
  }

  /**
   * Applies the rule to everything that is due now. Removal is final, so nothing is removed if the
   * clock has jumped since the start of the service.
   */
  @Scheduled(initialDelayString = "PT1M", fixedDelayString = "PT24H")
  void keepTheRule() throws InterruptedException {
    Duration jump = jump();
    if (jump.abs().compareTo(BELIEVED) > 0) {
      LOG.error("No text was removed: the clock jumped by {}; correct it and restart", jump);
      return;
    }
    Optional<Instant> oldRecords = before(rule.recordsFor());
    if (oldRecords.isPresent()) {
      String reason =
          "Kept for " + rule.recordsFor() + ", the rule of standproud.retention.records.";
      long taken =
          records.withhold(
              RecordQuery.all().between(null, oldRecords.get()), rule.mask(), SERVICE, reason);
      LOG.info("{} record(s) older than {} lost text", taken, rule.recordsFor());
    }
    before(rule.journalFor()).ifPresent(journal::cut);
  }

  private Duration jump() {
    Duration passed = Duration.ofNanos(steady.getAsLong() - startedNanos);
    return Duration.between(startedAt, clock.instant()).minus(passed);
  }

  private Optional<Instant> before(@Nullable Period keptFor) {
    return Optional.ofNullable(keptFor)
        .map(period -> clock.instant().atZone(ZoneOffset.UTC).minus(period).toInstant());
  }
}
