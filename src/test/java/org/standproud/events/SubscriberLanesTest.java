package org.standproud.events;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.standproud.events.SubscriberLanes.Place;

class SubscriberLanesTest {

  private static final UUID SLOW = new UUID(0, 1);
  private static final UUID QUICK = new UUID(0, 2);

  private final AtomicLong now = new AtomicLong();
  private final SubscriberLanes lanes = new SubscriberLanes(4, now::get);

  private long places(UUID of) {
    return IntStream.range(0, 10).mapToObj(i -> lanes.place(of)).filter(p -> p != null).count();
  }

  @Test
  void oneSubscriberTakesNoMoreThanItsPlaces() {
    assertThat(places(SLOW)).isEqualTo(4);
    assertThat(places(QUICK)).isEqualTo(4);
  }

  @Test
  void aSlowSubscriberGetsOneAtATimeUntilItIsQuickAgain() {
    Place first = lanes.place(SLOW);
    now.addAndGet(SubscriberLanes.SLOW.toNanos() + 1);
    assertThat(first).isNotNull();
    first.close();
    Place next = lanes.place(SLOW);
    assertThat(next).isNotNull();
    assertThat(places(SLOW)).isZero();
    assertThat(places(QUICK)).isEqualTo(4);
    next.close();
    List<Place> again = IntStream.range(0, 4).mapToObj(i -> lanes.place(SLOW)).toList();
    assertThat(again).doesNotContainNull();
  }
}
