package org.standproud.events;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * How many events may be on their way to one subscriber at a time, at each replica, so that one
 * that answers slowly or not at all leaves threads for the others: some while it answers quickly,
 * one after it was slow until it is quick again.
 */
final class SubscriberLanes {

  /** Slower than this is slow; common practice, no source: a shop system only stores the event. */
  static final Duration SLOW = Duration.ofSeconds(1);

  private final int most;
  private final LongSupplier nanos;
  private final Map<UUID, Lane> lanes = new HashMap<>();

  private static final class Lane {
    private int underWay;
    private boolean slow;
  }

  /** A sending that is under way, until it is closed. */
  @FunctionalInterface
  interface Place extends AutoCloseable {
    @Override
    void close();
  }

  /**
   * Lanes for every subscriber.
   *
   * @param most sendings at a time to one that is not slow
   * @param nanos a clock that only goes forward, in nanoseconds
   */
  SubscriberLanes(int most, LongSupplier nanos) {
    this.most = most;
    this.nanos = nanos;
  }

  /**
   * A place for one sending.
   *
   * @param subscription the subscriber
   * @return the place, or null if as many are under way as may be; it does not wait
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
