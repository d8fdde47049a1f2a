package org.standproud.api.gate;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class RefusedAttemptsTest {

  private final AtomicLong nanos = new AtomicLong();
  private final RefusedAttempts attempts =
      new RefusedAttempts(
          new TimeMeter() {
            @Override
            public long currentTimeNanos() {
              return nanos.get();
            }

            @Override
            public boolean isWallClockBased() {
              return false;
            }
          });

  @Test
  void tooManyFromOneAddressWaitAndAnotherDoesNot() {
    for (int i = 0; i < RefusedAttempts.A_MINUTE; i++) {
      assertThat(attempts.refused("192.0.2.1")).isZero();
    }
    assertThat(attempts.refused("192.0.2.1")).isPositive();
    assertThat(attempts.refused("192.0.2.2")).isZero();
    nanos.addAndGet(Duration.ofMinutes(1).toNanos());
    assertThat(attempts.refused("192.0.2.1")).isZero();
  }

  @Test
  void noMoreAddressesAreRememberedThanThereIsRoomFor() {
    for (int i = 0; i < RefusedAttempts.MOST_ADDRESSES + 10; i++) {
      attempts.refused("address " + i);
    }
    assertThat(attempts.addresses()).isEqualTo(RefusedAttempts.MOST_ADDRESSES);
  }
}
