package org.standproud.events;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Limits concurrent sends to one subscriber, at each replica, so that a slow or dead one leaves
 * threads for the others: a few while it answers quickly, one after it was slow until it is quick
 * again.
 */
final class SubscriberLanes {

  /**
   * A send slower than this is slow; common practice, no source: a shop system only stores the
   * event.
   */
  static final Duration SLOW = Duration.ofSeconds(1);

  private final int most;
  private final LongSupplier nanos;
  private final Map<UUID, Lane> lanes = new HashMap<>();

  private static final class Lane {
    private int underWay;
    private boolean slow;
  }

  /** A permit for a send, until it is closed. */
  @FunctionalInterface
  interface Place extends AutoCloseable {
    @Override
    void close();
  }

  /**
   * Creates the limits.
   *
   * @param most concurrent sends to a subscriber that is not slow
   * @param nanos a monotonic clock, in nanoseconds
   */
  SubscriberLanes(int most, LongSupplier nanos) {
    this.most = most;
    this.nanos = nanos;
  }

  /**
   * Takes a permit for one send.
   *
   * @param subscription the subscriber
   * @return the permit, or null if there is none; never blocks
   */
  synchronized @Nullable Place place(UUID subscription) {
    Lane lane = lanes.computeIfAbsent(subscription, id -> new Lane());
    if (lane.underWay >= (lane.slow ? 1 : most)) {
      return null;
    }
    lane.underWay++;
    long begun = nanos.getAsLong();
    return () -> left(subscription, lane, nanos.getAsLong() - begun);
  }

  private synchronized void left(UUID subscription, Lane lane, long took) {
    lane.underWay--;
    lane.slow = took > SLOW.toNanos();
    if (lane.underWay == 0 && !lane.slow) {
      lanes.remove(subscription, lane);
    }
  }
}
