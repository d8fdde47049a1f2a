package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import org.standproud.api.RunningService;
import org.standproud.api.ServiceProcess;

/** The database is stopped under a service, and started again. */
final class DatabaseGoneTrial implements Trial {

  private static final int PORT = Integer.getInteger("test.faults.port", 18120) + 4;
  private static final Duration PATIENCE = Duration.ofMinutes(2);

  private final int rounds;
  private long longestNanos;
  private int refused;

  /**
   * Without a database.
   *
   * @param rounds how often each of four addresses is asked; each refusal may take two seconds
   */
  DatabaseGoneTrial(int rounds) {
    this.rounds = rounds;
  }

  @Override
  public void run(Path work, Figures figures) throws Exception {
    try (Database database = new Database(work.resolve("database"), PORT);
        ServiceProcess service =
            ServiceProcess.start(work.resolve("audit"), "-Xmx300m", database.setting())) {
      RunningService.Caller shop = service.caller();
      HttpResponse<String> before = shop.assess(RunningService.seed("01"));
      assertThat(before.statusCode()).isEqualTo(201);
      assertThat(shop.get("/actuator/health/readiness").statusCode()).isEqualTo(200);

      database.stop();
      without(shop, before.headers().firstValue("Location").orElseThrow());
      figures.put("refused-while-away", refused);
      figures.put("longest-refusal-ms", longestNanos / 1_000_000);

      long begin = System.nanoTime();
      database.start();
      await()
          .atMost(PATIENCE)
          .until(() -> shop.assess(RunningService.seed("01")).statusCode() == 201);
      figures.put("well-again-after-ms", (System.nanoTime() - begin) / 1_000_000);
      well(database, shop, before, figures);
    }
  }

  private void without(RunningService.Caller shop, String self) {
    for (int round = 0; round < rounds; round++) {
      refused(() -> shop.assess(RunningService.seed("01")));
      for (String path : List.of(self, "/v1/assessments", "/v1/audit/verification")) {
        refused(() -> shop.get(path));
      }
    }
    assertThat(shop.get("/actuator/health/readiness").statusCode()).isEqualTo(503);
    assertThat(shop.get("/actuator/health/liveness").statusCode()).isEqualTo(200);
    HttpResponse<String> page = shop.get(self.replace("/v1", ""));
    assertThat(page.statusCode()).isEqualTo(503);
    assertThat(page.headers().firstValue("Content-Type").orElse("")).startsWith("text/html");
  }

  private void refused(Supplier<HttpResponse<String>> asked) {
    long begin = System.nanoTime();
    HttpResponse<String> answer = asked.get();
    longestNanos = Math.max(longestNanos, System.nanoTime() - begin);
    refused++;
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(503);
    assertThat(answer.headers().firstValue("Retry-After")).isPresent();
    assertThat(answer.body()).containsAnyOf("/problems/store-away", "/problems/not-stored");
  }

  private static void well(
      Database database, RunningService.Caller shop, HttpResponse<String> before, Figures figures) {
    String self = before.headers().firstValue("Location").orElseThrow();
    assertThat(shop.get(self).body()).isEqualTo(before.body());
    assertThat(shop.get("/actuator/health/readiness").statusCode()).isEqualTo(200);
    assertThat(RunningService.json(shop.get("/v1/audit/verification")).get("faults")).isEmpty();
    long records =
        database
            .look()
            .sql("select count(*) from audit_record where record_type = 'assessment'")
            .query(Long.class)
            .single();
    figures.put("acknowledged", 2);
    figures.put("records", records);
    assertThat(records).as("what was refused left nothing").isEqualTo(2);
  }
}
