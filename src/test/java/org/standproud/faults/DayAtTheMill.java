package org.standproud.faults;

import static org.awaitility.Awaitility.await;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.standproud.api.RunningService;
import tools.jackson.databind.node.ObjectNode;

/**
 * What people and systems of a shop ask of a service, mixed by chance: mostly set-ups to be judged,
 * each a little different, and answers looked at again; now and then a batch, a page, a sheet, what
 * to change, and the cards read in anew.
 */
final class DayAtTheMill implements AutoCloseable {

  private static final int REMEMBERED = 200;
  private static final List<String> SEEDS = List.of("01", "03", "08");
  private static final List<String> VIEWS =
      List.of("", "/trace", "/evidence", "/sarif", "/other-holds", "/questions");

  private final RunningService.Caller shop;
  private final Random chance;
  private final int aSecond;
  private final ScheduledExecutorService clock = Executors.newScheduledThreadPool(8);
  private final AtomicInteger asking = new AtomicInteger();
  private volatile boolean paused;
  private final AtomicLong keys = new AtomicLong();
  private final Map<String, Long> answers = new ConcurrentHashMap<>();
  private final ConcurrentLinkedDeque<String> known = new ConcurrentLinkedDeque<>();

  DayAtTheMill(RunningService.Caller shop, long seed, int aSecond) {
    this.shop = shop;
    this.chance = new Random(seed);
    this.aSecond = aSecond;
  }

  void start() {
    clock.scheduleAtFixedRate(this::safely, 0, 1_000_000 / aSecond, TimeUnit.MICROSECONDS);
  }

  /** Stops asking, and returns when everything is answered, so that what is held can be seen. */
  void pause() {
    paused = true;
    await().atMost(Duration.ofMinutes(2)).until(() -> asking.get() == 0);
  }

  /** Goes on asking. */
  void goOn() {
    paused = false;
  }

  /** Ends the day; how often which status was answered, or what stood in the way. */
  Map<String, Long> stop() throws InterruptedException {
    clock.shutdown();
    clock.awaitTermination(1, TimeUnit.MINUTES);
    return Map.copyOf(answers);
  }

  /** Handed on at once: a slow answer does not hold up the next question. */
  private void safely() {
    if (paused) {
      return;
    }
    int what;
    synchronized (chance) {
      what = chance.nextInt(1_000_000);
    }
    asking.incrementAndGet();
    clock.execute(() -> ask(what));
  }

  private void ask(int what) {
    String said;
    try {
      said = String.valueOf(asked(what).statusCode());
    } catch (RuntimeException e) {
      said = e.getClass().getSimpleName();
    }
    answers.merge(said, 1L, Long::sum);
    asking.decrementAndGet();
  }

  private HttpResponse<String> asked(int drawn) {
    String one = known.peekFirst();
    int what = drawn % 1000;
    if (what < 600 || one == null) {
      return judged(setup(drawn));
    } else if (what < 880) {
      return shop.get(one + VIEWS.get(what % VIEWS.size()));
    } else if (what < 920) {
      return shop.get("/v1/assessments?limit=20");
    } else if (what < 950) {
      return shop.get(what % 2 == 0 ? "/" : one.replace("/v1", ""));
    } else if (what < 970) {
      return shop.post("/v1/assessments/batch", batch(drawn), "application/x-ndjson");
    } else if (what < 980) {
      return sentTwice(drawn);
    } else if (what < 990) {
      return shop.get(one + "/remedies");
    } else if (what < 995) {
      return shop.get(one.replace("/v1", "") + "/sheet.pdf");
    }
    return shop.post("/v1/rules/reload", "", "application/json");
  }

  private HttpResponse<String> judged(ObjectNode setup) {
    HttpResponse<String> answer = shop.assess(setup);
    answer
        .headers()
        .firstValue("Location")
        .ifPresent(
            self -> {
              known.addFirst(self);
              if (known.size() > REMEMBERED) {
                known.pollLast();
              }
            });
    return answer;
  }

  private HttpResponse<String> sentTwice(int what) {
    ObjectNode setup = setup(what);
    HttpResponse<String> answer = null;
    String key = "traveler-" + keys.incrementAndGet();
    for (int time = 0; time < 2; time++) {
      answer =
          shop.send(
              shop.to("/v1/assessments")
                  .header("Content-Type", "application/json")
                  .header("Idempotency-Key", key)
                  .POST(BodyPublishers.ofString(setup.toString())));
    }
    return answer;
  }

  private static String batch(int what) {
    StringBuilder lines = new StringBuilder();
    for (int line = 0; line < 5; line++) {
      lines.append(setup(what + 1000 * line)).append('\n');
    }
    return lines.toString();
  }

  /** A plate of the demo shop, taller or lower by up to a fifth, so that few are met twice. */
  private static ObjectNode setup(int what) {
    ObjectNode setup = RunningService.seed(SEEDS.get(what % SEEDS.size()));
    ObjectNode stock = (ObjectNode) setup.get("stock");
    double height = stock.get("height").doubleValue();
    stock.put("height", height * (1 + (what / 1000 - 500) / 2500.0));
    return setup;
  }

  @Override
  public void close() {
    clock.shutdownNow();
  }
}
