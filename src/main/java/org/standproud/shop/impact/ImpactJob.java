package org.standproud.shop.impact;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.impact.ImpactReport;
import org.standproud.setup.Worded;

/** Work on past jobs that goes on while its author looks at how far it is. */
public final class ImpactJob implements Impact.Progress {

  /** What became of it. */
  public enum State implements Worded {
    /** Others are before it. */
    WAITING,
    /** It goes on. */
    RUNNING,
    /** All jobs were judged. */
    DONE,
    /** It was cancelled; the report holds what was found until then. */
    CANCELLED,
    /** It failed; the log shows why. */
    FAILED;

    @Override
    public String words() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * How far it is.
   *
   * @param id its id
   * @param author who wants to know
   * @param started when it was asked for
   * @param state waiting, running, done, cancelled or failed
   * @param done how many jobs were judged
   * @param total how many there are
   * @param report what would change; null until it has ended
   */
  @Schema(name = "ImpactProgress")
  public record Account(
      UUID id,
      String author,
      Instant started,
      State state,
      long done,
      long total,
      @Nullable ImpactReport report) {

    /** Whether nothing will change any more. */
    public boolean ended() {
      return state != State.WAITING && state != State.RUNNING;
    }
  }

  private final UUID id = UUID.randomUUID();
  private final String author;
  private final RuleBase candidate;
  private final Instant started;
  private final long total;

  private State state = State.WAITING;
  private boolean cancelled;
  private long done;
  private @Nullable ImpactReport report;

  ImpactJob(String author, RuleBase candidate, Instant started, long total) {
    this.author = author;
    this.candidate = candidate;
    this.started = started;
    this.total = total;
  }

  /** Its id. */
  public UUID id() {
    return id;
  }

  RuleBase candidate() {
    return candidate;
  }

  /** How far it is now. */
  public synchronized Account account() {
    return new Account(id, author, started, state, done, total, report);
  }

  /**
   * How far it is once that has changed, or some time has passed.
   *
   * @param seen how far it was
   * @param seconds how long to wait at most
   * @throws InterruptedException if interrupted
   */
  public synchronized Account next(Account seen, long seconds) throws InterruptedException {
    long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
    while (account().equals(seen) && !seen.ended()) {
      long left = TimeUnit.NANOSECONDS.toMillis(until - System.nanoTime());
      if (left <= 0) {
        break;
      }
      wait(left);
    }
    return account();
  }

  /** Ends it before the last job; does nothing if it has ended. */
  public synchronized void cancel() {
    cancelled = true;
    if (state == State.WAITING) {
      end(State.CANCELLED, null);
    }
  }

  @Override
  public synchronized void done(long jobs) {
    done = jobs;
    notifyAll();
  }

  @Override
  public synchronized boolean cancelled() {
    return cancelled;
  }

  /** Begins, unless it was cancelled while it waited. */
  synchronized boolean begin() {
    if (state == State.WAITING) {
      state = State.RUNNING;
      notifyAll();
      return true;
    }
    return false;
  }

  synchronized void end(State how, @Nullable ImpactReport found) {
    state = how;
    report = found;
    done = found == null ? done : found.jobs();
    notifyAll();
  }
}
