package org.standproud.api;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.standproud.api.assessing.Assessor;

/**
 * Whole assessments a second in one process, from the text of a request to the answer that is on
 * disk, with no server between: what HTTP costs is seen beside it. A plain main, because the
 * service is started around it; arguments: seconds of warming, seconds of measuring, callers.
 * Prints the rate.
 */
final class InProcess {

  private static final String CALLER = "benchmark";

  private InProcess() {}

  /** Runs it. */
  public static void main(String... arguments) throws Exception {
    int callers = Integer.parseInt(arguments[2]);
    Path records = Files.createTempDirectory("in-process");
    ExecutorService threads = Executors.newFixedThreadPool(callers);
    try (RunningService service = RunningService.start(records, Path.of("rules"))) {
      Assessor assessor = service.part(Assessor.class);
      rate(assessor, threads, callers, Integer.parseInt(arguments[0]));
      System.out.println(rate(assessor, threads, callers, Integer.parseInt(arguments[1])));
    } finally {
      threads.shutdown();
    }
  }

  private static double rate(Assessor assessor, ExecutorService threads, int callers, int seconds)
      throws Exception {
    String setup = RunningService.seed("01").toString();
    long begin = System.nanoTime();
    long end = begin + TimeUnit.SECONDS.toNanos(seconds);
    Callable<Integer> caller =
        () -> {
          int made = 0;
          for (; System.nanoTime() < end; made++) {
            assessor.assess(setup, CALLER);
          }
          return made;
        };
    List<Callable<Integer>> all = new ArrayList<>();
    for (int i = 0; i < callers; i++) {
      all.add(caller);
    }
    int made = 0;
    for (Future<Integer> one : threads.invokeAll(all)) {
      made += one.get();
    }
    return made * 1e9 / (System.nanoTime() - begin);
  }
}
