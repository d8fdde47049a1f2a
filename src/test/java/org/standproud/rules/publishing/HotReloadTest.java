package org.standproud.rules.publishing;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.standproud.IntegrationTest;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.Shop;
import org.standproud.rules.SmallCards;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.ActiveRuleBase;
import org.standproud.rules.gate.CardFolder;
import org.standproud.rules.gate.Coverage;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.impact.PastJobs;
import org.standproud.rules.language.QuantityText;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;

/** Cards reloaded two hundred times while set-ups are judged. */
@IntegrationTest
class HotReloadTest {

  private static final int RELOADS = 200;

  /** The whole catalogue takes its time: two hundred of it by -Dtest.reloads=200. */
  private static final int RELOADS_OF_THE_CATALOGUE = Integer.getInteger("test.reloads", 2);

  /** Tolerance for what the second half may add: profiles and caches of the platform itself. */
  private static final long METASPACE_TOLERANCE = 1 << 20;

  private static final long HEAP_TOLERANCE = 4 << 20;

  private static final int READINGS = 8;

  /**
   * Cards of which one limit is changed to and fro.
   *
   * @param gate what they pass
   * @param files their texts, by the limit
   * @param plate a plate that is tall by the lower limit only
   * @param limitOf id of the card with the limit "tall"
   * @param lower the lower limit
   * @param upper the upper one
   */
  private record Cards(
      Gate gate,
      Function<String, Map<String, String>> files,
      Evidence plate,
      String limitOf,
      String lower,
      String upper) {}

  /** 44 mm on 20 mm is 2.2. */
  private static final Cards SMALL =
      new Cards(
          SmallCards.gate(),
          SmallCards::tall,
          Shop.evidence(Shop.STICK_OUT, 0.044, Shop.GRIP_DEPTH, 0.020),
          "HOLD-001",
          "2.1",
          "2.3");

  private final ActiveRuleBase active = new ActiveRuleBase();
  private final Map<String, Kind> expected = new ConcurrentHashMap<>();
  private final Queue<String> failures = new ConcurrentLinkedQueue<>();
  private final AtomicLong judged = new AtomicLong();
  private volatile boolean reloading = true;

  @Test
  @Timeout(240)
  void twoHundredReloadsUnderLoadFailNothingMixNothingAndLeaveNothingBehind() throws Exception {
    reloadUnderLoad(SMALL, RELOADS);
  }

  /** 63 mm on 25 mm is 2.52. */
  @Test
  @Timeout(1_200)
  void theShopsWholeCatalogueIsReloadedUnderLoadLikewise() throws Exception {
    String setup =
        Files.readString(Path.of("seeds/setups/08-wire-too-deep.json"))
            .replace("\"height\": 90", "\"height\": 88");
    Catalogue shop = ((CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"))).catalogue();
    Evidence plate =
        EvidenceGathering.of(((Reading.Accepted) new SetupReader(shop).readJson(setup)).setup());
    Map<String, String> cards = CardFolder.read(Path.of("rules")).files();
    Gate gate =
        new Gate(
            Vocabulary.all(), new QuantityText(), name -> Optional.empty(), Coverage.Demand.REFUSE);
    reloadUnderLoad(
        new Cards(gate, limit -> tall(cards, limit), plate, "HOLD-041", "2.5", "2.53"),
        RELOADS_OF_THE_CATALOGUE);
  }

  private static Map<String, String> tall(Map<String, String> cards, String limit) {
    Map<String, String> changed = new TreeMap<>(cards);
    changed.computeIfPresent(
        "holding/HOLD-041.yaml", (f, text) -> text.replace("{tall: 2.5}", "{tall: " + limit + "}"));
    return changed;
  }

  private void reloadUnderLoad(Cards cards, int reloads) throws InterruptedException {
    RuleBasePublisher desk =
        new RuleBasePublisher(
            cards.gate(),
            new RevisionsInMemory(),
            active,
            Publishing.ONE_PERSON,
            new Impact(SmallCards.VERDICT, 1),
            PastJobs.NONE,
            Clock.systemUTC());
    reload(desk, cards, 0);
    List<Thread> threads = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      Thread thread = new Thread(() -> judge(cards));
      thread.start();
      threads.add(thread);
    }
    for (int i = 1; i <= reloads / 2; i++) {
      reload(desk, cards, i);
    }
    long metaspace = used("Metaspace");
    long heap = used("");
    for (int i = reloads / 2 + 1; i <= reloads; i++) {
      reload(desk, cards, i);
    }
    long metaspaceAfter = used("Metaspace");
    long heapAfter = used("");
    reloading = false;
    for (Thread thread : threads) {
      thread.join();
    }
    assertThat(failures).isEmpty();
    assertThat(judged.get()).isGreaterThan(reloads);
    assertThat(desk.revisions()).hasSize(reloads + 1);
    if (reloads >= RELOADS) { // with fewer the platform itself has not settled yet
      assertThat(metaspaceAfter - metaspace).as("metaspace").isLessThan(METASPACE_TOLERANCE);
      assertThat(heapAfter - heap).as("heap").isLessThan(HEAP_TOLERANCE);
    }
  }

  private void reload(RuleBasePublisher desk, Cards cards, int i) {
    Map<String, String> files = cards.files().apply(i % 2 == 0 ? cards.lower() : cards.upper());
    PublishResult answer =
        desk.publish(CardEdit.of(files), "engineer", "reload " + i, Impact.Progress.UNWATCHED);
    assertThat(answer).isInstanceOf(PublishResult.Published.class);
    String revision = ((PublishResult.Published) answer).revision().id();
    expected.put(revision, i % 2 == 0 ? Kind.FAIL : Kind.PASS);
  }

  /** An answer is mixed if its revision, its limit and its kind do not belong together. */
  private void judge(Cards cards) {
    while (reloading) {
      try {
        RuleBase base = active.get().orElseThrow();
        RuleTrace trace = base.evaluate(cards.plate());
        String limit = trace.card(cards.limitOf()).card().limits().get("tall").text();
        Kind kind = trace.card("HOLD-001").kind();
        Kind ofRevision = expected.getOrDefault(trace.revision(), kind);
        if (!trace.revision().equals(base.revision().id())
            || kind != ofRevision
            || kind != (limit.equals(cards.lower()) ? Kind.FAIL : Kind.PASS)
            || base.kinds(cards.plate()).cards().stream()
                .noneMatch(c -> c.id().equals("HOLD-001") && c.kind() == ofRevision)) {
          failures.add(trace.revision() + " answered " + kind + " with " + limit);
        }
        judged.incrementAndGet();
      } catch (RuntimeException e) {
        failures.add(e.toString());
      }
    }
  }

  /**
   * What is in use after a collection: one pool by its name, or all of the heap. The threads under
   * load take whole regions of the heap as soon as a collection ends, so the least of several
   * readings counts.
   */
  private static long used(String pool) {
    return IntStream.range(0, READINGS).mapToLong(i -> usedNow(pool)).min().orElseThrow();
  }

  private static long usedNow(String pool) {
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
