package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.standproud.api.RunningService;
import org.standproud.api.ServiceProcess;
import tools.jackson.databind.JsonNode;

/**
 * Three services on one PostgreSQL and one broker take set-ups from a topic and over HTTP; on the
 * way one of them is killed, the broker is killed and started again, and so is the database stopped
 * and started. {@code test.replicas.streamed} and {@code test.replicas.posted} say how many
 * set-ups.
 */
final class ReplicasTrial implements Trial {

  private static final int STREAMED = Integer.getInteger("test.replicas.streamed", 400);
  private static final int POSTED = Integer.getInteger("test.replicas.posted", 200);
  private static final int PORT = Integer.getInteger("test.faults.port", 18120);
  private static final int PARTITIONS = 6;
  private static final Duration PATIENCE = Duration.ofMinutes(6);
  private static final Duration AWAY = Duration.ofSeconds(5);
  private static final String CARD = "/v1/rules/REACH-001";

  private final List<ServiceProcess> replicas = new ArrayList<>();
  private Path work;
  private Database database;
  private Broker broker;

  @Override
  public void run(Path folder, Figures figures) throws Exception {
    work = folder;
    try (Database postgres = new Database(work.resolve("database"), PORT + 2);
        Broker kafka = new Broker(work.resolve("broker"), PORT);
        SubscriberShop shop = new SubscriberShop()) {
      database = postgres;
      broker = kafka;
      broker.topics(PARTITIONS, Stream.SETUPS, Stream.ANSWERS, Stream.REFUSED);
      for (int i = 0; i < 3; i++) {
        replicas.add(replica(i));
      }
      shop.subscribe(replicas.get(0).caller());
      try (Stream stream = new Stream(broker.address())) {
        through(stream, shop, figures);
      }
    } finally {
      for (ServiceProcess replica : replicas) {
        replica.close();
      }
    }
  }

  /** Keys of the chain lie in one folder, as a shop would share them; what each states does not. */
  private ServiceProcess replica(int number) throws Exception {
    return ServiceProcess.start(
        work.resolve("keys"),
        "-Xmx300m",
        "-XX:TieredStopAtLevel=1",
        database.setting(),
        "--standproud.audit.checkpoints=" + work.resolve("checkpoints-" + number + ".ndjson"),
        "--standproud.stream.enabled=true",
        "--spring.kafka.bootstrap-servers=" + broker.address(),
        "--spring.kafka.consumer.properties.session.timeout.ms=6000",
        "--spring.kafka.producer.properties.transaction.timeout.ms=15000",
        "--standproud.events.inside-hosts=127.0.0.1",
        "--standproud.events.first-wait=200ms",
        "--standproud.events.poll=200ms");
  }

  private void through(Stream stream, SubscriberShop shop, Figures figures) throws Exception {
    long begin = System.nanoTime();
    ExecutorService callers = Executors.newFixedThreadPool(4);
    try {
      Future<?> sent = callers.submit(() -> stream.send(STREAMED, Duration.ofMillis(50)));
      List<Future<HttpResponse<String>>> posted = new ArrayList<>();
      for (int i = 0; i < POSTED; i++) {
        posted.add(callers.submit(posting(i)));
      }
      String rules = misfortunes(stream, figures);
      sent.get();
      await().atMost(PATIENCE).until(() -> stream.answered() >= STREAMED);
      List<HttpResponse<String>> answers = new ArrayList<>();
      for (Future<HttpResponse<String>> answer : posted) {
        answers.add(answer.get());
      }
      figures.put("seconds", (System.nanoTime() - begin) / 1_000_000_000);
      stream.readOn(Duration.ofSeconds(20));
      check(stream, answers, shop, rules, figures);
    } finally {
      callers.shutdownNow();
    }
  }

  private String misfortunes(Stream stream, Figures figures) throws Exception {
    after(stream, 0.15);
    replicas.get(1).close();
    after(stream, 0.30);
    String rules = published(replicas.get(0).caller());
    replicas.set(1, replica(1));
    after(stream, 0.45);
    broker.kill();
    Thread.sleep(AWAY.toMillis());
    broker.start();
    after(stream, 0.70);
    database.stop();
    Thread.sleep(AWAY.toMillis());
    database.start();
    figures.put("replicas", replicas.size());
    figures.put("replicas-killed", 1);
    figures.put("broker-killed", 1);
    figures.put("database-stopped", 1);
    return rules;
  }

  private static void after(Stream stream, double share) {
    await().atMost(PATIENCE).until(() -> stream.answered() >= share * STREAMED);
  }

  /** Sent to one replica after the other, under one key, until one answers. */
  private Callable<HttpResponse<String>> posting(int number) {
    return () -> {
      for (int time = 0; time < 600; time++) {
        try {
          HttpResponse<String> answer = post(replicas.get((number + time) % 3).caller(), number);
          if (answer.statusCode() == 201) {
            return answer;
          }
          assertThat(answer.statusCode()).as(answer.body()).isIn(409, 503);
        } catch (java.io.UncheckedIOException e) {
          // It was killed, or is not up again: the next is asked.
        }
        Thread.sleep(500);
      }
      throw new AssertionError("no replica answered traveler " + number);
    };
  }

  private static HttpResponse<String> post(RunningService.Caller to, int number) {
    return to.send(
        to.to("/v1/assessments")
            .timeout(Duration.ofSeconds(20))
            .header("Content-Type", "application/json")
            .header("Idempotency-Key", "traveler-" + number)
            .POST(BodyPublishers.ofString(Stream.setup("posted-" + number))));
  }

  private static String published(RunningService.Caller to) {
    HttpResponse<String> text = to.get(CARD + "/text");
    HttpResponse<String> proposed =
        to.send(
            to.to(CARD + "?note=because&author=Ann")
                .header("Content-Type", "application/yaml")
                .header("If-Match", text.headers().firstValue("ETag").orElseThrow())
                .PUT(
                    BodyPublishers.ofString(
                        text.body().replace("no room: 0 mm", "no room: 0.5 mm"))));
    String proposal = RunningService.json(proposed).at("/proposal/self").stringValue();
    HttpResponse<String> published =
        to.post(proposal + "/publication", "{\"author\":\"Ann\"}", "application/json");
    return RunningService.json(published).at("/revision/id").stringValue();
  }

  private void check(
      Stream stream,
      List<HttpResponse<String>> posted,
      SubscriberShop shop,
      String rules,
      Figures figures)
      throws Exception {
    Set<String> records = new HashSet<>(stream.records());
    posted.forEach(answer -> records.add(Stream.id(answer)));
    long kept = count("select count(*) from audit_record where record_type = 'assessment'");
    await().atMost(PATIENCE).until(() -> count("select count(*) from event_outbox") == 0);
    figures.put("sent-to-topic", STREAMED);
    figures.put("posted", POSTED);
    figures.put("committed-answers", stream.answers());
    figures.put("messages-answered", stream.answered());
    figures.put("records", kept);
    figures.put("events-made", records.size());
    figures.put("events-delivered", shop.ids().size());
    figures.put("events-delivered-again", shop.received() - shop.ids().size());

    assertThat(stream.answers()).as("every message has one answer").isEqualTo(STREAMED);
    assertThat(stream.answered()).isEqualTo(STREAMED);
    assertThat(records).as("every answer has a record of its own").hasSize(STREAMED + POSTED);
    assertThat(kept).as("and there is no other").isEqualTo(STREAMED + POSTED);
    assertThat(shop.ids()).as("each was delivered under its one id").isEqualTo(records);
    for (ServiceProcess replica : replicas) {
      sameEverywhere(replica.caller(), posted, rules);
    }
    figures.put("chain-faults", 0);
    figures.put("rule-revisions-in-service", 1);
  }

  private static void sameEverywhere(
      RunningService.Caller replica, List<HttpResponse<String>> posted, String rules) {
    JsonNode chain = RunningService.json(replica.get("/v1/audit/verification"));
    assertThat(chain.get("faults")).as("chain").isEmpty();
    await()
        .atMost(Duration.ofSeconds(30))
        .until(
            () ->
                rules.equals(
                    RunningService.json(replica.get("/v1/rules"))
                        .at("/revision/id")
                        .stringValue()));
    for (HttpResponse<String> answer : posted) {
      String self = answer.headers().firstValue("Location").orElseThrow();
      assertThat(replica.get(self).body()).isEqualTo(answer.body());
    }
  }

  private long count(String sql) {
    return database.look().sql(sql).query(Long.class).single();
  }
}
