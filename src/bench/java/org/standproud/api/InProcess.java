package org.standproud.api;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.standproud.assessment.Assessor;

/**
 * Whole assessments a second in one process, from the text of a request to the answer that is on
 * disk, with no server between: what HTTP costs is seen beside it. A plain main, because the
 * service is started around it; argument: callers. Reads lines of seconds, and after each works so
 * long and prints the rate.
 */
final class InProcess {

  private static final String CALLER = "benchmark";

  private final Assessor assessor;
  private final int callers;
  private final String setup = RunningService.seed("01").toString();

  private InProcess(Assessor assessor, int callers) {
    this.assessor = assessor;
    this.callers = callers;
  }

  /** Runs it. */
  public static void main(String... arguments) throws Exception {
    int callers = Integer.parseInt(arguments[0]);
    Path records = Files.createTempDirectory("in-process");
    ExecutorService threads = Executors.newFixedThreadPool(callers);
    try (RunningService service = RunningService.start(records, Path.of("rules"));
        BufferedReader wanted =
            new BufferedReader(new InputStreamReader(System.in, StandardCharsets.US_ASCII))) {
      InProcess all = new InProcess(service.part(Assessor.class), callers);
      for (String seconds; (seconds = wanted.readLine()) != null; ) {
        System.out.println("rate=" + all.rate(threads, Integer.parseInt(seconds)));
      }
    } finally {
      threads.shutdown();
    }
  }

  private double rate(ExecutorService threads, int seconds) throws Exception {
    long begin = System.nanoTime();
    long end = begin + TimeUnit.SECONDS.toNanos(seconds);
    Callable<Integer> caller = () -> made(end);
    int made = 0;
    for (Future<Integer> one : threads.invokeAll(Collections.nCopies(callers, caller))) {
      made += one.get();
    }
    return made * 1e9 / (System.nanoTime() - begin);
  }

  private int made(long end) throws InterruptedException {
    int made = 0;
    for (; System.nanoTime() < end; made++) {
      assessor.assess(setup, CALLER);
    }
    return made;
  }
}
