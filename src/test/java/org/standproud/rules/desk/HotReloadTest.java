package org.standproud.rules.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.Shop;
import org.standproud.rules.SmallCards;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.ActiveRuleBase;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.impact.PastJobs;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.RuleTrace;

/** Cards reloaded two hundred times while set-ups are judged. */
class HotReloadTest {

  private static final int RELOADS = 200;
  private static final int WARM = 100;

  /** Tolerance for what the second half may add: profiles and caches of the platform itself. */
  private static final long METASPACE_TOLERANCE = 1 << 20;

  private static final long HEAP_TOLERANCE = 4 << 20;

  /** 44 mm on 20 mm is 2.2: tall where the limit is 2.1, not tall where it is 2.3. */
  private static final Evidence PLATE =
      Shop.evidence(Shop.STICK_OUT, 0.044, Shop.GRIP_DEPTH, 0.020);

  private final ActiveRuleBase active = new ActiveRuleBase();
  private final Map<String, Kind> expected = new ConcurrentHashMap<>();
  private final Queue<String> failures = new ConcurrentLinkedQueue<>();
  private final AtomicLong judged = new AtomicLong();
  private volatile boolean reloading = true;

  @Test
  @Timeout(240)
  void twoHundredReloadsUnderLoadFailNothingMixNothingAndLeaveNothingBehind() throws Exception {
    CardDesk desk =
        new CardDesk(
            SmallCards.gate(),
            new RevisionsInMemory(),
            active,
            Publishing.ONE_PERSON,
            new Impact(SmallCards.VERDICT, 1),
            PastJobs.NONE,
            Clock.systemUTC());
    reload(desk, 0);
    List<Thread> threads = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      Thread thread = new Thread(this::judge);
      thread.start();
      threads.add(thread);
    }
    for (int i = 1; i <= WARM; i++) {
      reload(desk, i);
    }
    long metaspace = used("Metaspace");
    long heap = used("");
    for (int i = WARM + 1; i <= RELOADS; i++) {
      reload(desk, i);
    }
    long metaspaceAfter = used("Metaspace");
    long heapAfter = used("");
    reloading = false;
    for (Thread thread : threads) {
      thread.join();
    }
    assertThat(failures).isEmpty();
    assertThat(judged.get()).isGreaterThan(RELOADS);
    assertThat(desk.revisions()).hasSize(RELOADS + 1);
    assertThat(metaspaceAfter - metaspace).as("metaspace").isLessThan(METASPACE_TOLERANCE);
    assertThat(heapAfter - heap).as("heap").isLessThan(HEAP_TOLERANCE);
  }

  private void reload(CardDesk desk, int i) {
    Map<String, String> files = SmallCards.tall(i % 2 == 0 ? "2.1" : "2.3");
    DeskAnswer answer =
        desk.publish(CardEdit.of(files), "engineer", "reload " + i, Impact.Progress.UNWATCHED);
    assertThat(answer).isInstanceOf(DeskAnswer.Published.class);
    String revision = ((DeskAnswer.Published) answer).revision().id();
    expected.put(revision, i % 2 == 0 ? Kind.FAIL : Kind.PASS);
  }

  /** An answer is mixed if its revision, its limit and its kind do not belong together. */
  private void judge() {
    while (reloading) {
      try {
        RuleBase base = active.get().orElseThrow();
        RuleTrace trace = base.evaluate(PLATE);
        String limit = trace.card("HOLD-001").card().limits().get("tall").text();
        Kind kind = trace.card("HOLD-001").kind();
        Kind ofRevision = expected.getOrDefault(trace.revision(), kind);
        if (!trace.revision().equals(base.revision().id())
            || kind != ofRevision
            || kind != (limit.equals("2.1") ? Kind.FAIL : Kind.PASS)
            || base.kinds(PLATE).cards().stream()
                .noneMatch(c -> c.id().equals("HOLD-001") && c.kind() == ofRevision)) {
          failures.add(trace.revision() + " answered " + kind + " with " + limit);
        }
        judged.incrementAndGet();
      } catch (RuntimeException e) {
        failures.add(e.toString());
      }
    }
  }

  /** What is in use after a collection: one pool by its name, or all of the heap. */
  private static long used(String pool) {
    System.gc();
    System.gc();
    return pool.isEmpty()
        ? ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed()
        : ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(p -> p.getName().equals(pool))
            .map(MemoryPoolMXBean::getUsage)
            .mapToLong(u -> u.getUsed())
            .sum();
  }
}
