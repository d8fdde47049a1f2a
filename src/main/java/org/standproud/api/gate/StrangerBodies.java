package org.standproud.api.gate;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/**
 * Limits how many bodies of unidentified callers are read at a time: per address, and in total.
 * Each body holds a thread, so without a limit a few hundred slow callers would hold every thread
 * of the server.
 */
final class StrangerBodies {

  /** Of all addresses together; common practice, no source: a fraction of the server's threads. */
  static final int MOST = 32;

  /** Per address; enough for people who sign in behind one proxy. */
  static final int MOST_OF_ONE = 8;

  private final Semaphore free = new Semaphore(MOST);
  private final Map<String, Integer> byAddress = new ConcurrentHashMap<>();

  /** A permit, until it is closed. */
  @FunctionalInterface
  interface Place extends AutoCloseable {
    @Override
    void close();
  }

  /**
   * Takes a permit to read one body.
   *
   * @param address where it comes from
   * @return the permit, or null if there is none; never blocks
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

  /** Number of bodies being read. */
  int reading() {
    return MOST - free.availablePermits();
  }

  /** Number of addresses remembered; none while nothing is read. */
  int addresses() {
    return byAddress.size();
  }
}
