package org.standproud.events;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.logging.LogLevel;
import com.github.kagkarlsson.scheduler.task.CompletionHandler;
import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import java.time.Duration;
import java.util.UUID;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.standproud.assessment.idempotency.IdempotencyKeyRepository;

/**
 * Sends the rows of the outbox while the service runs, and deletes expired ones. A failed attempt
 * is retried with doubling delays; one that a crashed service began is taken over by the next.
 */
final class OutboxDispatcher implements SmartLifecycle {

  private static final Logger LOG = LoggerFactory.getLogger(OutboxDispatcher.class);

  private static final int THREADS = 16;

  /** Of these for one subscriber, so that several subscribers that hang leave some free. */
  private static final int THREADS_OF_ONE = 4;

  private static final int MOST_DOUBLINGS = 20;
  private static final Duration CLEARING = Duration.ofHours(1);
  private static final Duration HEARTBEAT = Duration.ofSeconds(10);

  private final Scheduler scheduler;
  private volatile boolean running;

  /**
   * The retry policy.
   *
   * @param tries most attempts
   * @param firstWait wait after the first attempt
   * @param poll how often the outbox is polled
   * @param deadKept how long dead rows are kept
   */
  record RetryPolicy(int tries, Duration firstWait, Duration poll, Duration deadKept) {}

  OutboxDispatcher(
      DataSource dataSource,
      Outbox outbox,
      WebhookDelivery sending,
      IdempotencyKeyRepository keys,
      RetryPolicy policy) {
    RecurringTask<Void> clearing =
        Tasks.recurring("clear away", FixedDelay.of(CLEARING))
            .execute(
                (instance, context) -> {
                  clear("idempotency keys", keys::forgetExpired);
                  clear("undeliverable events", () -> outbox.forgetDead(policy.deadKept()));
                });
    this.scheduler =
        Scheduler.create(dataSource, task(outbox, sending, policy))
            .startTasks(clearing)
            .threads(THREADS)
            .pollingInterval(policy.poll())
            // A row that a crashed service was sending is taken over after a minute.
            .heartbeatInterval(HEARTBEAT)
            // The outbox records the subscriber's failure; it is not a fault of the service.
            .failureLogging(LogLevel.DEBUG, false)
            .build();
  }

  /** Logs a fault, which the scheduler does not, and goes on with what is left to clear away. */
  static void clear(String what, Runnable clearing) {
    try {
      clearing.run();
    } catch (RuntimeException | Error e) {
      LOG.error("Expired {} could not be deleted", what, e);
    }
  }

  private static Task<Void> task(Outbox outbox, WebhookDelivery sending, RetryPolicy policy) {
    SubscriberLanes lanes = new SubscriberLanes(THREADS_OF_ONE, System::nanoTime);
    return Tasks.custom(Outbox.TASK, Void.class)
        .onFailure(
            (failed, operations) -> {
              UUID id = UUID.fromString(failed.getExecution().taskInstance.getId());
              int tries = outbox.find(id).map(Outbox.Row::tries).orElse(policy.tries());
              if (tries >= policy.tries()) {
                outbox.giveUp(id);
                operations.stop();
              } else {
                operations.reschedule(failed, failed.getTimeDone().plus(wait(tries, policy)));
              }
            })
        .execute(
            (instance, context) -> {
              UUID id = UUID.fromString(instance.getId());
              UUID to = outbox.find(id).map(Outbox.Row::subscription).orElse(id);
              try (SubscriberLanes.Place place = lanes.place(to)) {
                if (place == null) {
                  // Not an attempt: no request was sent to the subscriber.
                  return (done, operations) ->
                      operations.reschedule(done, done.getTimeDone().plus(policy.poll()));
                }
                sending.send(id);
                return new CompletionHandler.OnCompleteRemove<>();
              }
            });
  }

  /** The wait after so many attempts; it doubles each time. */
  private static Duration wait(int tries, RetryPolicy policy) {
    int doublings = Math.min(Math.max(0, tries - 1), MOST_DOUBLINGS);
    return policy.firstWait().multipliedBy(1L << doublings);
  }

  @Override
  public void start() {
    scheduler.start();
    running = true;
  }

  /** Finishes sends in progress. */
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
