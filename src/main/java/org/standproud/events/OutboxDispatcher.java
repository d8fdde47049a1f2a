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
import org.springframework.context.SmartLifecycle;
import org.standproud.assessment.idempotency.IdempotencyKeyRepository;

/**
 * Sends what is in the outbox while the service runs, and clears away what has expired. A sending
 * that fails is tried again, each time after twice as long; one that was begun by a service that
 * died is begun again by the next.
 */
final class OutboxDispatcher implements SmartLifecycle {

  private static final int THREADS = 16;

  /** Of these for one subscriber, so that several that hang leave some. */
  private static final int THREADS_OF_ONE = 4;

  private static final int MOST_DOUBLINGS = 20;
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
    SubscriberLanes lanes = new SubscriberLanes(THREADS_OF_ONE, System::nanoTime);
    return Tasks.custom(Outbox.TASK, Void.class)
        .onFailure(
            (failed, operations) -> {
              UUID id = UUID.fromString(failed.getExecution().taskInstance.getId());
              int tries = outbox.find(id).map(Outbox.Row::tries).orElse(patience.tries());
              if (tries >= patience.tries()) {
                outbox.giveUp(id);
                operations.stop();
              } else {
                operations.reschedule(failed, failed.getTimeDone().plus(wait(tries, patience)));
              }
            })
        .execute(
            (instance, context) -> {
              UUID id = UUID.fromString(instance.getId());
              UUID to = outbox.find(id).map(Outbox.Row::subscription).orElse(id);
              try (SubscriberLanes.Place place = lanes.place(to)) {
                if (place == null) {
                  // It is no try: the subscriber has been asked nothing.
                  return (done, operations) ->
                      operations.reschedule(done, done.getTimeDone().plus(patience.poll()));
                }
                sending.send(id);
                return new CompletionHandler.OnCompleteRemove<>();
              }
            });
  }

  /** The wait after so many tries: the first, then twice as long each time. */
  private static Duration wait(int tries, Patience patience) {
    int doublings = Math.min(Math.max(0, tries - 1), MOST_DOUBLINGS);
    return patience.firstWait().multipliedBy(1L << doublings);
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
