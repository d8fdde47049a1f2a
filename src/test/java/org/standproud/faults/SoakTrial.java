package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.standproud.api.ServiceProcess;

/**
 * Keeps a service busy for long and looks at what it holds. {@code test.soak.minutes}, {@code
 * test.soak.a-second} (requests) and {@code test.soak.look-seconds} say how long, how hard and how
 * often. The first third is for warming.
 */
final class SoakTrial implements Trial {

  private static final Duration LENGTH = Duration.ofMinutes(Long.getLong("test.soak.minutes", 30));
  private static final int A_SECOND = Integer.getInteger("test.soak.a-second", 8);
  private static final Duration LOOKS =
      Duration.ofSeconds(Long.getLong("test.soak.look-seconds", 60));
  private static final String HEAP = "-Xmx384m";

  /** What may grow by how much: a share of its mean, or what is noise. */
  private enum Held {
    HEAP_MB(Vitals::heapMb, 0.10, 8),
    METASPACE_MB(Vitals::metaspaceMb, 0.03, 2),
    RESIDENT_MB(Vitals::residentMb, 0.10, 32),
    THREADS(Vitals::threads, 0.05, 4),
    FILES(Vitals::files, 0.05, 8);

    private final ToDoubleFunction<Vitals> read;
    private final double share;
    private final double noise;

    Held(ToDoubleFunction<Vitals> read, double share, double noise) {
      this.read = read;
      this.share = share;
      this.noise = noise;
    }

    private String key() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
  }

  @Override
  public void run(Path work, Figures figures) throws Exception {
    List<Vitals> looks = new ArrayList<>();
    Map<String, Long> answers;
    try (ServiceProcess service = ServiceProcess.start(work, HEAP, "-XX:+ExitOnOutOfMemoryError");
        DayAtTheMill day = new DayAtTheMill(service.caller(), Trials.seed(), A_SECOND)) {
      long begin = System.nanoTime();
      day.start();
      for (int look = 1; look <= LENGTH.dividedBy(LOOKS); look++) {
        Thread.sleep(
            Math.max(0, LOOKS.multipliedBy(look).minusNanos(System.nanoTime() - begin).toMillis()));
        day.pause();
        looks.add(Vitals.of(service));
        day.goOn();
        System.out.println(looks.get(looks.size() - 1));
      }
      answers = new TreeMap<>(day.stop());
    }
    report(figures, looks, answers);
  }

  private static void report(Figures figures, List<Vitals> looks, Map<String, Long> answers) {
    figures.put("minutes", LENGTH.toMinutes());
    figures.put("requests-a-second", A_SECOND);
    figures.put("heap-limit", HEAP);
    answers.forEach((status, count) -> figures.put("answered-" + status, count));
    figures.put("records", looks.get(looks.size() - 1).records());
    List<Vitals> warm = looks.subList(looks.size() / 3, looks.size());
    for (Held held : Held.values()) {
      Drift drift = Drift.of(warm, held.read);
      figures.put(held.key() + "-first", held.read.applyAsDouble(warm.get(0)));
      figures.put(held.key() + "-last", held.read.applyAsDouble(warm.get(warm.size() - 1)));
      figures.put(held.key() + "-grown", drift.grown());
    }
    assertThat(answers)
        .as("answers")
        .isNotEmpty()
        .allSatisfy((s, n) -> assertThat(s).startsWith("2"));
    for (Held held : Held.values()) {
      assertThat(Drift.of(warm, held.read).flat(held.share, held.noise)).as(held.key()).isTrue();
    }
  }
}
