package org.standproud.refusal;

import java.util.concurrent.Semaphore;
import java.util.function.IntFunction;

/** Lets a number of calls of one kind run at a time; one more is refused and does not wait. */
public final class ConcurrencyLimit {

  private final int most;
  private final Semaphore free;
  private final IntFunction<? extends RuntimeException> full;

  /**
   * A limit.
   *
   * @param most how many
   * @param full makes the refusal of one more from the limit
   */
  public ConcurrencyLimit(int most, IntFunction<? extends RuntimeException> full) {
    this.most = most;
    this.full = full;
    free = new Semaphore(most);
  }

  /** A place of one call, until it is closed. */
  @FunctionalInterface
  public interface Place extends AutoCloseable {

    @Override
    void close();
  }

  /** A place for one more; throws what was given for it if there is none. */
  public Place place() {
    if (!free.tryAcquire()) {
      throw full.apply(most);
    }
    return free::release;
  }
}
