package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.standproud.api.ServiceProcess;
import org.standproud.faults.fuzz.ContractOperations;
import org.standproud.faults.fuzz.HostileRequests;
import org.standproud.faults.fuzz.Shop;
import org.standproud.faults.fuzz.Verdicts;

/**
 * Hostile requests over every path and method of the contract, {@code test.fuzz.requests} of them,
 * from four callers at once. What the service holds is looked at twelve times.
 */
final class FuzzTrial implements Trial {

  private static final int REQUESTS = Integer.getInteger("test.fuzz.requests", 10_000);
  private static final int LOOKS = 12;
  private static final int CALLERS = 4;

  @Override
  public void run(Path work, Figures figures) throws Exception {
    Verdicts verdicts = new Verdicts();
    List<Vitals> looks = new ArrayList<>();
    try (ServiceProcess service = ServiceProcess.start(work, "-Xmx384m")) {
      HostileRequests requests =
          new HostileRequests(
              ContractOperations.read(Path.of("api-docs/openapi.yaml")),
              new Shop(service.caller()),
              URI.create("http://127.0.0.1:" + service.caller().port()),
              Trials.seed());
      for (int look = 0; look < LOOKS; look++) {
        send(requests, verdicts, look * REQUESTS / LOOKS, (look + 1) * REQUESTS / LOOKS);
        looks.add(Vitals.of(service));
      }
      assertThat(service.runs()).isTrue();
      verdicts.wrong().stream().limit(40).forEach(System.out::println);
      service.heard().stream()
          .filter(line -> line.contains("Exception") && !line.startsWith("\tat"))
          .distinct()
          .limit(40)
          .forEach(System.out::println);
      List<String> hanging = verdicts.hanging();
      hanging.forEach(System.out::println);
      figures.put("over-5-s-alone-too", hanging.size());
    }
    report(figures, verdicts, looks);
  }

  private static void send(HostileRequests requests, Verdicts verdicts, int from, int until)
      throws Exception {
    ExecutorService callers = Executors.newFixedThreadPool(CALLERS);
    try {
      List<Future<?>> sent = new ArrayList<>();
      for (int i = from; i < until; i++) {
        int number = i;
        sent.add(
            callers.submit(
                () -> {
                  verdicts.send(requests.request(number));
                  return number;
                }));
      }
      for (Future<?> one : sent) {
        one.get();
      }
    } finally {
      callers.shutdownNow();
    }
  }

  private static void report(Figures figures, Verdicts verdicts, List<Vitals> looks) {
    figures.put("requests", REQUESTS);
    verdicts.statuses().forEach((status, count) -> figures.put("answered-" + status, count));
    figures.put("wrong", verdicts.wrong().size());
    figures.put("over-5-s-beside-others", verdicts.slow());
    figures.put("longest-ms", verdicts.longest().toMillis());
    List<Vitals> warm = looks.subList(LOOKS / 3, LOOKS);
    Drift heap = Drift.of(warm, Vitals::heapMb);
    figures.put("heap-mb-first", warm.get(0).heapMb());
    figures.put("heap-mb-last", warm.get(warm.size() - 1).heapMb());
    figures.put("heap-mb-grown", heap.grown());
    figures.put("threads-last", warm.get(warm.size() - 1).threads());
    assertThat(verdicts.wrong()).isEmpty();
    assertThat(figures.text()).as("none hangs").contains("over-5-s-alone-too=0\n");
    assertThat(heap.flat(0.10, 12)).as("heap").isTrue();
    assertThat(Drift.of(warm, Vitals::threads).flat(0.05, 6)).as("threads").isTrue();
  }
}
