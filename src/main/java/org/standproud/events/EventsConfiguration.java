package org.standproud.events;

import java.net.InetAddress;
import java.time.Clock;
import javax.sql.DataSource;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.standproud.assessment.idempotency.IdempotencyKeyRepository;

/** Stores the outbox in the database of the records. */
@Configuration(proxyBeanMethods = false)
class EventsConfiguration {

  private static final Clock CLOCK = Clock.systemUTC();

  @Bean
  @DependsOnDatabaseInitialization
  Subscriptions subscriptions(DataSource dataSource) {
    return new Subscriptions(dataSource);
  }

  @Bean
  Outbox outbox(DataSource dataSource, Subscriptions subscriptions, EventsProperties properties) {
    return new Outbox(dataSource, subscriptions, properties.source(), CLOCK);
  }

  @Bean
  TargetGuard targetGuard(EventsProperties properties) {
    return new TargetGuard(properties.inside(), InetAddress::getAllByName);
  }

  /** Commands that only read the records send no events. */
  @Bean
  @ConditionalOnWebApplication
  OutboxDispatcher postman(
      DataSource dataSource,
      Outbox outbox,
      Subscriptions subscriptions,
      TargetGuard guard,
      IdempotencyKeyRepository keys,
      EventsProperties properties) {
    return new OutboxDispatcher(
        dataSource,
        outbox,
        new WebhookDelivery(outbox, subscriptions, guard, CLOCK),
        keys,
        new OutboxDispatcher.RetryPolicy(
            properties.tries(), properties.firstWait(), properties.poll(), properties.deadKept()));
  }
}
