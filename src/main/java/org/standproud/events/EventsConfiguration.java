package org.standproud.events;

import java.net.InetAddress;
import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.util.Set;
import javax.sql.DataSource;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.standproud.assessment.idempotency.IdempotencyKeyRepository;

/** Puts the outbox beside the records. */
@Configuration(proxyBeanMethods = false)
class EventsConfiguration {

  private static final Clock CLOCK = Clock.systemUTC();

  @Bean
  @DependsOnDatabaseInitialization
  Subscriptions subscriptions(DataSource dataSource) {
    return new Subscriptions(dataSource);
  }

  @Bean
  Outbox outbox(
      DataSource dataSource,
      Subscriptions subscriptions,
      @Value("${standproud.events.source}") URI source) {
    return new Outbox(dataSource, subscriptions, source, CLOCK);
  }

  @Bean
  TargetGuard targetGuard(@Value("${standproud.events.inside-hosts}") Set<String> insiders) {
    return new TargetGuard(insiders, InetAddress::getAllByName);
  }

  /** Commands that only read the records send nothing. */
  @Bean
  @ConditionalOnWebApplication
  OutboxDispatcher postman(
      DataSource dataSource,
      Outbox outbox,
      Subscriptions subscriptions,
      TargetGuard guard,
      IdempotencyKeyRepository keys,
      @Value("${standproud.events.tries}") int tries,
      @Value("${standproud.events.first-wait}") Duration firstWait,
      @Value("${standproud.events.poll}") Duration poll,
      @Value("${standproud.events.dead-kept}") Duration deadKept) {
    return new OutboxDispatcher(
        dataSource,
        outbox,
        new WebhookDelivery(outbox, subscriptions, guard, CLOCK),
        keys,
        new OutboxDispatcher.Patience(tries, firstWait, poll, deadKept));
  }
}
