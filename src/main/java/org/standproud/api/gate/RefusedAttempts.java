package org.standproud.api.gate;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Limits how often an address may send an invalid key. A key cannot be guessed; this keeps such
 * attempts from filling the journal, and shows them there. A valid key is never refused because of
 * other attempts from its address.
 */
final class RefusedAttempts {

  /** Common practice, no source: more than a system with an old key and a retry needs. */
  static final int A_MINUTE = 60;

  /** Most addresses remembered; the one idle longest is dropped first. */
  static final int MOST_ADDRESSES = 10_000;

  private final TimeMeter clock;

  private final Map<String, Bucket> buckets =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
          return size() > MOST_ADDRESSES;
        }
      };

  /**
   * Creates an empty counter.
   *
   * @param clock the clock that refills
   */
  RefusedAttempts(TimeMeter clock) {
    this.clock = clock;
  }

  /**
   * Counts a refused attempt.
   *
   * @param address where it came from
   * @return how long to wait before the next; zero while under the limit
   */
  synchronized Duration refused(String address) {
    Bucket bucket =
        buckets.computeIfAbsent(
            address,
            a ->
                Bucket.builder()
                    .addLimit(
                        limit ->
                            limit.capacity(A_MINUTE).refillGreedy(A_MINUTE, Duration.ofMinutes(1)))
                    .withCustomTimePrecision(clock)
                    .build());
    ConsumptionProbe probe = bucket.tryConsumeAndReturnRemaining(1);
    return probe.isConsumed() ? Duration.ZERO : Duration.ofNanos(probe.getNanosToWaitForRefill());
  }

  /** Number of addresses remembered. */
  synchronized int addresses() {
    return buckets.size();
  }
}
