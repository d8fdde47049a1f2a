package org.standproud.api.operate;

import java.time.Clock;
import java.time.Instant;
import java.time.Period;
import java.time.ZoneOffset;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.standproud.api.access.journal.AccessJournal;
import org.standproud.audit.Mask;
import org.standproud.audit.Person;
import org.standproud.audit.store.RecordQuery;
import org.standproud.audit.store.Retention;

/**
 * Takes old texts away by the clock, as the shop's rule says, if it says so. What is taken from
 * records stands in their chain, and what is taken from the journal of access in the journal.
 */
@Component
@ConditionalOnWebApplication(type = ConditionalOnWebApplication.Type.SERVLET)
class ScheduledRetention {

  private static final Logger LOG = LoggerFactory.getLogger(ScheduledRetention.class);
  private static final Person SERVICE = new Person("the service, by the clock", "operator");

  private final Retention records;
  private final AccessJournal journal;
  private final Rule rule;
  private final Clock clock;

  /**
   * How long the shop keeps what.
   *
   * @param recordsFor how long records keep their texts; null for ever
   * @param mask what is taken from them then
   * @param journalFor how long the journal of access is kept; null for ever
   */
  record Rule(@Nullable Period recordsFor, Mask mask, @Nullable Period journalFor) {}

  @Autowired
  ScheduledRetention(
      Retention records,
      AccessJournal journal,
      @Value("${standproud.retention.records}") String recordsFor,
      @Value("${standproud.retention.mask}") Mask mask,
      @Value("${standproud.retention.journal}") String journalFor) {
    this(
        records,
        journal,
        new Rule(period(recordsFor), mask, period(journalFor)),
        Clock.systemUTC());
  }

  ScheduledRetention(Retention records, AccessJournal journal, Rule rule, Clock clock) {
    this.records = records;
    this.journal = journal;
    this.rule = rule;
    this.clock = clock;
  }

  private static @Nullable Period period(String text) {
    return text.isBlank() ? null : Period.parse(text);
  }

  /** Does what the rule asks for now; what it did before it does not do again. */
  @Scheduled(initialDelayString = "PT1M", fixedDelayString = "PT24H")
  void keepTheRule() throws InterruptedException {
    Optional<Instant> oldRecords = before(rule.recordsFor());
    if (oldRecords.isPresent()) {
      String reason =
          "Kept for " + rule.recordsFor() + ", the rule of standproud.retention.records.";
      long taken =
          records.withhold(
              RecordQuery.all().between(null, oldRecords.get()), rule.mask(), SERVICE, reason);
      LOG.info("{} record(s) lost text that was kept for {}", taken, rule.recordsFor());
    }
    before(rule.journalFor()).ifPresent(journal::cut);
  }

  private Optional<Instant> before(@Nullable Period keptFor) {
    return Optional.ofNullable(keptFor)
        .map(period -> clock.instant().atZone(ZoneOffset.UTC).minus(period).toInstant());
  }
}
