package org.standproud.faults.fuzz;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicLong;

/** Sends requests and says of each answer whether a service may give it. */
public final class Verdicts {

  private static final Duration HANG = Duration.ofSeconds(5);

  private final HttpClient client = HttpClient.newHttpClient();
  private final Map<Integer, Integer> statuses = new ConcurrentSkipListMap<>();
  private final Queue<String> wrong = new ConcurrentLinkedQueue<>();
  private final Queue<HttpRequest> slow = new ConcurrentLinkedQueue<>();
  private final AtomicLong longestNanos = new AtomicLong();

  /** Sends a request and keeps what was wrong with the answer. */
  public void send(HttpRequest request) throws InterruptedException {
    long begin = System.nanoTime();
    try {
      HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
      statuses.merge(answer.statusCode(), 1, Integer::sum);
      judge(request, answer);
    } catch (IOException e) {
      wrong.add(name(request) + ": " + e);
    }
    long took = System.nanoTime() - begin;
    longestNanos.accumulateAndGet(took, Math::max);
    if (took > HANG.toNanos()) {
      slow.add(request);
    }
  }

  /** A deliberate 503 names its problem; nothing else may be a fault of the service. */
  private void judge(HttpRequest request, HttpResponse<String> answer) {
    int status = answer.statusCode();
    boolean problem =
        answer
            .headers()
            .firstValue("Content-Type")
            .orElse("")
            .startsWith("application/problem+json");
    if (status >= 500 && !(status == 503 && problem)) {
      wrong.add(name(request) + ": " + status + " " + answer.body());
    } else if (status >= 400 && !problem && !tooLong(request)) {
      wrong.add(name(request) + ": " + status + " without a problem");
    } else if (answer.headers().firstValue("X-Injected").isPresent()) {
      wrong.add(name(request) + ": a header of the caller's making");
    }
  }

  /** A request line over the server's 8 kB is refused before anybody could word a problem. */
  private static boolean tooLong(HttpRequest request) {
    return request.uri().toString().length() > 7_000;
  }

  private static String name(HttpRequest request) {
    String address = request.uri().getRawPath();
    String query = request.uri().getRawQuery();
    return request.method() + " " + address + (query == null ? "" : "?" + query);
  }

  /** How often which status was answered. */
  public Map<Integer, Integer> statuses() {
    return statuses;
  }

  /** Requests with an answer that no service may give, and the answer. */
  public List<String> wrong() {
    return List.copyOf(wrong);
  }

  /** How many requests took longer than five seconds beside the others. */
  public int slow() {
    return slow.size();
  }

  /**
   * Asks alone what was slow, and gives what takes longer than five seconds then too: on a machine
   * that others use, only that says that the service hangs.
   */
  public List<String> hanging() throws IOException, InterruptedException {
    List<String> hanging = new ArrayList<>();
    for (HttpRequest request : slow) {
      long begin = System.nanoTime();
      client.send(request, HttpResponse.BodyHandlers.discarding());
      if (System.nanoTime() - begin > HANG.toNanos()) {
        hanging.add(name(request));
      }
    }
    return hanging;
  }

  /** The longest time that an answer took. */
  public Duration longest() {
    return Duration.ofNanos(longestNanos.get());
  }
}
