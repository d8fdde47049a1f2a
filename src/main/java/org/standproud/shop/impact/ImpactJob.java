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

/** A background run over past jobs whose author watches its progress. */
public final class ImpactJob implements Impact.Progress {

  /** Its state. */
  public enum State implements Worded {
    /** It waits for others. */
    WAITING,
    /** It runs. */
    RUNNING,
    /** All jobs were judged. */
    DONE,
    /** It was cancelled; the report holds the results until then. */
    CANCELLED,
    /** It failed; the log shows why. */
    FAILED;

    @Override
    public String words() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * Progress of the work on past jobs.
   *
   * @param id its id
   * @param author who started it
   * @param started time of the start
   * @param state waiting, running, done, cancelled or failed
   * @param done number of jobs judged
   * @param total number of jobs
   * @param report the report; present once the work has ended
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

    /** Whether it has ended. */
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

  /** The current progress. */
  public synchronized Account account() {
    return new Account(id, author, started, state, done, total, report);
  }

  /**
   * The progress once it differs, or after some time.
   *
   * @param seen the progress seen last
   * @param seconds longest wait
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

  /** Cancels it; does nothing if it has ended. */
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

  /** Starts, unless it was cancelled while it waited. */
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
