package org.standproud.refusal;

import java.util.concurrent.Semaphore;
import java.util.function.IntFunction;

/** Limits the concurrent calls of one kind; one more is refused and does not wait. */
public final class ConcurrencyLimit {

  private final int most;
  private final Semaphore free;
  private final IntFunction<? extends RuntimeException> full;

  /**
   * Creates the limit.
   *
   * @param most most concurrent calls
   * @param full creates the exception from the limit
   */
  public ConcurrencyLimit(int most, IntFunction<? extends RuntimeException> full) {
    this.most = most;
    this.full = full;
    free = new Semaphore(most);
  }

  /** A permit of one call, until it is closed. */
  @FunctionalInterface
  public interface Place extends AutoCloseable {

    @Override
    void close();
  }

  /** Takes a permit; throws the given exception if there is none. */
  public Place place() {
    if (!free.tryAcquire()) {
      throw full.apply(most);
    }
    return free::release;
  }
}
