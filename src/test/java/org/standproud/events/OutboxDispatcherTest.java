package org.standproud.events;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;

/** What is cleared away every hour. */
class OutboxDispatcherTest {

  @Test
  void aFailureWhileClearingAwayIsLoggedAndTheNextStepRuns() {
    ListAppender<ILoggingEvent> log = new ListAppender<>();
    log.start();
    Logger logger = (Logger) LoggerFactory.getLogger(OutboxDispatcher.class);
    logger.addAppender(log);
    AtomicInteger cleared = new AtomicInteger();
    OutboxDispatcher.clear(
        "events",
        () -> {
          throw new IllegalStateException("the store is away");
        });
    OutboxDispatcher.clear(
        "keys",
        () -> {
          throw new StackOverflowError("too deep");
        });
    OutboxDispatcher.clear("rows", cleared::incrementAndGet);
    logger.detachAppender(log);
    assertThat(log.list)
        .extracting(
            ILoggingEvent::getFormattedMessage, event -> event.getThrowableProxy().getMessage())
        .containsExactly(
            tuple("Expired events could not be deleted", "the store is away"),
            tuple("Expired keys could not be deleted", "too deep"));
    assertThat(cleared).hasValue(1);
  }
}
