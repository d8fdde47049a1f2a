package org.standproud.api.gate;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/**
 * How many bodies of callers who have not shown who they are may be read at a time: some for each
 * address, some for all of them. A body is read by a thread that waits for it, so without a limit a
 * few hundred slow callers hold every thread of the server.
 */
final class StrangerBodies {

  /** Of all addresses together; common practice, no source: a fraction of the server's threads. */
  static final int MOST = 32;

  /** Of one address; enough for people who sign in behind one proxy. */
  static final int MOST_OF_ONE = 8;

  private final Semaphore free = new Semaphore(MOST);
  private final Map<String, Integer> byAddress = new ConcurrentHashMap<>();

  /** A place, until it is closed. */
  @FunctionalInterface
  interface Place extends AutoCloseable {
    @Override
    void close();
  }

  /**
   * A place to read one body.
   *
   * @param address where it comes from
   * @return the place, or null if there is none; it does not wait
   */
  @Nullable Place place(String address) {
    int held = byAddress.merge(address, 1, Integer::sum);
    if (held <= MOST_OF_ONE && free.tryAcquire()) {
      return () -> {
        free.release();
        leave(address);
      };
    }
    leave(address);
    return null;
  }

  private void leave(String address) {
    byAddress.computeIfPresent(address, (a, held) -> held == 1 ? null : held - 1);
  }

  /** How many bodies are being read. */
  int reading() {
    return MOST - free.availablePermits();
  }

  /** How many addresses are remembered; none while nothing is read. */
  int addresses() {
    return byAddress.size();
  }
}
