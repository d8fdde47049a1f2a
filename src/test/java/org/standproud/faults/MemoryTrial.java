package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.standproud.api.RunningService;
import org.standproud.api.ServiceProcess;

/**
 * Many large requests at once to a service with a small heap: edits of cards of the greatest
 * length, bodies over the limit, set-ups as long as may be, batches, the whole chain read out.
 */
final class MemoryTrial implements Trial {

  private static final int REQUESTS = Integer.getInteger("test.memory.requests", 600);
  private static final int CALLERS = 48;
  private static final HttpClient CLIENT = HttpClient.newHttpClient();
  private static final String JSON = "application/json";
  private static final String HEAP = "-Xmx256m";

  /** Stands for the status of a call whose connection ended without one. */
  private static final int CUT_OFF = 0;

  private static final int LARGEST_EDIT = 2 * 1024 * 1024;
  private static final int LARGEST_BODY = 64 * 1024;

  @Override
  public void run(Path work, Figures figures) throws Exception {
    try (ServiceProcess service = ServiceProcess.start(work, HEAP, "-XX:+ExitOnOutOfMemoryError")) {
      Map<Integer, Integer> answers = press(service.caller());
      figures.put("heap-limit", HEAP);
      figures.put("callers", CALLERS);
      figures.put("requests", REQUESTS);
      answers.forEach((status, count) -> figures.put("answered-" + status, count));
      assertThat(service.runs()).as("it did not run out of memory").isTrue();
      assertThat(answers.keySet())
          .isNotEmpty()
          .isSubsetOf(200, 201, 202, 400, 404, 409, 412, 413, 422, 428, 429, 503);
      assertThat(answers).containsKey(413);
      assertThat(service.caller().assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
      figures.put("heap-mb-afterwards", Vitals.of(service).heapMb());
    }
  }

  private static Map<Integer, Integer> press(RunningService.Caller shop) throws Exception {
    Random chance = new Random(Trials.seed());
    ExecutorService callers = Executors.newFixedThreadPool(CALLERS);
    try {
      List<Future<Integer>> sent = new ArrayList<>();
      for (int i = 0; i < REQUESTS; i++) {
        int kind = chance.nextInt(6);
        Callable<Integer> one = () -> status(shop, kind);
        sent.add(callers.submit(one));
      }
      Map<Integer, Integer> answers = new TreeMap<>();
      for (Future<Integer> one : sent) {
        answers.merge(one.get(), 1, Integer::sum);
      }
      return answers;
    } finally {
      callers.shutdownNow();
    }
  }

  /** What was said is let go unread: it is the service that is to be short of memory. */
  private static int status(RunningService.Caller shop, int kind) throws InterruptedException {
    try {
      return CLIENT.send(request(shop, kind).build(), BodyHandlers.discarding()).statusCode();
    } catch (IOException e) {
      return CUT_OFF;
    }
  }

  private static HttpRequest.Builder request(RunningService.Caller shop, int kind) {
    String setup = RunningService.seed("01").toString();
    return switch (kind) {
      case 0 ->
          shop.to("/v1/rules/REACH-001?note=n&author=a")
              .header("Content-Type", "application/yaml")
              .header("If-Match", "*")
              .PUT(BodyPublishers.ofString(list(LARGEST_EDIT - 100)));
      case 1 -> post(shop, "", JSON, " ".repeat(4 * LARGEST_BODY) + setup);
      case 2 -> post(shop, "", JSON, list(LARGEST_BODY - 100));
      case 3 -> post(shop, "/batch", "application/x-ndjson", (setup + "\n").repeat(20));
      case 4 -> shop.to("/v1/audit/chain");
      default -> post(shop, "", JSON, setup);
    };
  }

  private static HttpRequest.Builder post(
      RunningService.Caller shop, String below, String type, String body) {
    return shop.to("/v1/assessments" + below)
        .header("Content-Type", type)
        .POST(BodyPublishers.ofString(body));
  }

  /** A long list, which as a tree takes many times its length. */
  private static String list(int length) {
    return "[" + "{},".repeat(length / 3) + "{}]";
  }
}
