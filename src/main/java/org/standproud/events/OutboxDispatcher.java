package org.standproud.events;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.logging.LogLevel;
import com.github.kagkarlsson.scheduler.task.FailureHandler;
import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import java.time.Duration;
import java.util.UUID;
import javax.sql.DataSource;
import org.springframework.context.SmartLifecycle;
import org.standproud.assessment.idempotency.IdempotencyKeyRepository;

/**
 * Sends what is in the outbox while the service runs, and clears away what has expired. A sending
 * that fails is tried again, each time after twice as long; one that was begun by a service that
 * died is begun again by the next.
 */
final class OutboxDispatcher implements SmartLifecycle {

  private static final int THREADS = 4;
  private static final double LONGER = 2;
  private static final Duration CLEARING = Duration.ofHours(1);
  private static final Duration HEARTBEAT = Duration.ofSeconds(10);

  private final Scheduler scheduler;
  private volatile boolean running;

  /**
   * How often and how long is tried.
   *
   * @param tries most tries of one sending
   * @param firstWait wait after the first
   * @param poll how often the outbox is looked at
   * @param deadKept how long what was given up stays to be seen
   */
  record Patience(int tries, Duration firstWait, Duration poll, Duration deadKept) {}

  OutboxDispatcher(
      DataSource dataSource,
      Outbox outbox,
      WebhookDelivery sending,
      IdempotencyKeyRepository keys,
      Patience patience) {
    RecurringTask<Void> clearing =
        Tasks.recurring("clear away", FixedDelay.of(CLEARING))
            .execute(
                (instance, context) -> {
                  keys.forgetExpired();
                  outbox.forgetDead(patience.deadKept());
                });
    this.scheduler =
        Scheduler.create(dataSource, task(outbox, sending, patience))
            .startTasks(clearing)
            .threads(THREADS)
            .pollingInterval(patience.poll())
            // What a service was sending when it died is sent by another after a minute.
            .heartbeatInterval(HEARTBEAT)
            // What a subscriber does is in the outbox; it is no fault of the service.
            .failureLogging(LogLevel.DEBUG, false)
            .build();
  }

  private static Task<Void> task(Outbox outbox, WebhookDelivery sending, Patience patience) {
    FailureHandler<Void> later =
        new FailureHandler.ExponentialBackoffFailureHandler<>(patience.firstWait(), LONGER);
    return Tasks.oneTime(Outbox.TASK)
        .onFailure(
            new FailureHandler.MaxRetriesFailureHandler<>(
                patience.tries() - 1,
                later,
                (failed, operations) ->
                    outbox.giveUp(UUID.fromString(failed.getExecution().taskInstance.getId()))))
        .execute((instance, context) -> sending.send(UUID.fromString(instance.getId())));
  }

  @Override
  public void start() {
    scheduler.start();
    running = true;
  }

  /** Finishes what is being sent. */
  @Override
  public void stop() {
    scheduler.stop();
    running = false;
  }

  @Override
  public boolean isRunning() {
    return running;
  }
}
