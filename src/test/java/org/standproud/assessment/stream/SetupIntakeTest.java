package org.standproud.assessment.stream;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.consumer.KafkaConsumer;
import org.apache.kafka.clients.consumer.OffsetAndMetadata;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.TopicPartition;
import org.apache.kafka.common.serialization.ByteArrayDeserializer;
import org.apache.kafka.common.serialization.ByteArraySerializer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.kafka.test.EmbeddedKafkaBroker;
import org.springframework.kafka.test.EmbeddedKafkaKraftBroker;
import org.standproud.IntegrationTest;
import org.standproud.Standproud;
import org.standproud.audit.records.RecordQuery;
import org.standproud.audit.records.Records;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The streaming intake on a real broker started here. */
@IntegrationTest
class SetupIntakeTest {

  private static final Duration PATIENCE = Duration.ofSeconds(60);
  private static final EmbeddedKafkaBroker BROKER = new EmbeddedKafkaKraftBroker(1, 2);
  private static final AtomicInteger TOPICS = new AtomicInteger();

  @TempDir Path directory;

  /** Each test has topics of its own on the one broker. */
  private final int number = TOPICS.incrementAndGet();

  private final String setups = "shop" + number + ".setups";
  private final String answers = "shop" + number + ".answers";
  private final String refused = "shop" + number + ".refused";

  @BeforeAll
  static void startBroker() {
    // One broker alone keeps the state of transactions.
    BROKER.brokerProperties(
        Map.of(
            "transaction.state.log.replication.factor", "1",
            "transaction.state.log.min.isr", "1",
            "group.initial.rebalance.delay.ms", "0"));
    BROKER.afterPropertiesSet();
  }

  @AfterAll
  static void stopBroker() {
    BROKER.destroy();
  }

  @BeforeEach
  void addTopics() {
    BROKER.addTopics(setups, answers, refused);
  }

  @Test
  void everySetupOfTheTopicGetsOneAnswerWhichIsTheOneOnRecord() {
    try (ConfigurableApplicationContext service = service()) {
      send(setups, "a", seed("01"), Map.of());
      send(setups, "b", seed("08"), Map.of());

      List<ConsumerRecord<byte[], byte[]>> got = read(answers, 2);

      assertThat(got).hasSize(2);
      for (ConsumerRecord<byte[], byte[]> answer : got) {
        UUID id = UUID.fromString(header(answer, SetupIntake.ASSESSMENT));
        assertThat(answer.value())
            .isEqualTo(records(service).find(id).orElseThrow().record().account().answer().utf8());
      }
      assertThat(got).extracting(a -> text(a.key())).containsExactlyInAnyOrder("a", "b");
    }
  }

  @Test
  void whatCannotBeJudgedIsPutAsideWithTheProblemAndSpoilsNothingElse() {
    try (ConfigurableApplicationContext service = service()) {
      send(setups, "broken", "{\"units\": ", Map.of());
      send(setups, "empty", "{}", Map.of());
      send(setups, "large", " ".repeat(65 * 1024), Map.of());
      send(setups, "good", seed("01"), Map.of());

      List<ConsumerRecord<byte[], byte[]>> back = read(refused, 3);

      Map<String, JsonNode> problems = new HashMap<>();
      back.forEach(
          r ->
              problems.put(
                  text(r.key()), JsonMapper.shared().readTree(header(r, SetupIntake.PROBLEM))));
      assertThat(problems).containsOnlyKeys("broken", "empty", "large");
      assertThat(problems.get("broken").get("status").intValue()).isEqualTo(400);
      assertThat(problems.get("empty").get("status").intValue()).isEqualTo(422);
      assertThat(problems.get("empty").get("errors")).isNotEmpty();
      assertThat(problems.get("large").get("status").intValue()).isEqualTo(413);
      assertThat(back)
          .filteredOn(r -> text(r.key()).equals("broken"))
          .allSatisfy(r -> assertThat(text(r.value())).isEqualTo("{\"units\": "));
      assertThat(read(answers, 1)).extracting(a -> text(a.key())).containsExactly("good");
      assertThat(count(records(service))).isEqualTo(1);
    }
  }

  /** What happens when a service dies after the records are on disk and before the broker knows. */
  @Test
  void messagesThatComeAgainGetTheAnswersTheyHadAndLeaveNoSecondRecord() throws Exception {
    List<String> before;
    try (ConfigurableApplicationContext service = service()) {
      for (int i = 0; i < 6; i++) {
        send(setups, "job-" + i, seed("0" + (i + 1)), Map.of());
      }
      before = ids(read(answers, 6));
      assertThat(count(records(service))).isEqualTo(6);
    }
    forgetHowFarItWasRead();
    try (ConfigurableApplicationContext service = service()) {
      List<String> twice = ids(read(answers, 12));

      assertThat(twice.subList(6, 12)).containsExactlyInAnyOrderElementsOf(before);
      assertThat(count(records(service))).isEqualTo(6);
    }
  }

  @Test
  void aKeyOfTheProducersOwnMakesTwoSendingsOneJob() {
    try (ConfigurableApplicationContext service = service()) {
      Map<String, String> key = Map.of("Idempotency-Key", "\"traveler-4711\"");
      send(setups, "first", seed("01"), key);
      send(setups, "again", seed("01"), key);
      send(setups, "other body", seed("02"), key);

      List<String> ids = ids(read(answers, 2));

      assertThat(ids.get(0)).isEqualTo(ids.get(1));
      assertThat(count(records(service))).isEqualTo(1);
      assertThat(read(refused, 1))
          .allSatisfy(r -> assertThat(header(r, SetupIntake.PROBLEM)).contains("422"));
    }
  }

  private ConfigurableApplicationContext service() {
    return SpringApplication.run(
        Standproud.class,
        "--server.port=0",
        "--standproud.audit.directory=" + directory,
        "--standproud.rules.directory=rules",
        "--standproud.stream.enabled=true",
        "--standproud.stream.setups=" + setups,
        "--standproud.stream.answers=" + answers,
        "--standproud.stream.refused=" + refused,
        "--spring.kafka.bootstrap-servers=" + BROKER.getBrokersAsString(),
        "--logging.level.root=WARN",
        "--spring.main.banner-mode=off");
  }

  private static Records records(ConfigurableApplicationContext service) {
    return service.getBean(Records.class);
  }

  private static int count(Records records) {
    List<Object> found = new ArrayList<>();
    records.each(RecordQuery.all(), found::add);
    return found.size();
  }

  private void send(String topic, String key, String body, Map<String, String> headers) {
    ProducerRecord<byte[], byte[]> message = new ProducerRecord<>(topic, 0, utf8(key), utf8(body));
    headers.forEach((name, value) -> message.headers().add(name, utf8(value)));
    try (KafkaProducer<byte[], byte[]> producer =
        new KafkaProducer<>(
            Map.of("bootstrap.servers", BROKER.getBrokersAsString()),
            new ByteArraySerializer(),
            new ByteArraySerializer())) {
      producer.send(message);
    }
  }

  /** All committed messages of a topic from its beginning, once there are so many. */
  private List<ConsumerRecord<byte[], byte[]>> read(String topic, int wanted) {
    List<ConsumerRecord<byte[], byte[]>> found = new ArrayList<>();
    Instant end = Instant.now().plus(PATIENCE);
    consuming(
        consumer -> {
          consumer.subscribe(List.of(topic));
          while (found.size() < wanted && Instant.now().isBefore(end)) {
            consumer.poll(Duration.ofMillis(200)).forEach(found::add);
          }
        });
    assertThat(found).as("messages of %s", topic).hasSizeGreaterThanOrEqualTo(wanted);
    return found;
  }

  private void consuming(Consumer<KafkaConsumer<byte[], byte[]>> use) {
    Map<String, Object> settings =
        Map.of(
            "bootstrap.servers",
            BROKER.getBrokersAsString(),
            "group.id",
            UUID.randomUUID().toString(),
            "auto.offset.reset",
            "earliest",
            "isolation.level",
            "read_committed");
    try (KafkaConsumer<byte[], byte[]> consumer =
        new KafkaConsumer<>(settings, new ByteArrayDeserializer(), new ByteArrayDeserializer())) {
      use.accept(consumer);
    }
  }

  private void forgetHowFarItWasRead() throws Exception {
    Map<TopicPartition, OffsetAndMetadata> start = new HashMap<>();
    for (int partition = 0; partition < 2; partition++) {
      start.put(new TopicPartition(setups, partition), new OffsetAndMetadata(0));
    }
    try (Admin admin = Admin.create(Map.of("bootstrap.servers", BROKER.getBrokersAsString()))) {
      admin.alterConsumerGroupOffsets("standproud", start).all().get();
    }
  }

  private static List<String> ids(List<ConsumerRecord<byte[], byte[]>> messages) {
    return messages.stream().map(a -> header(a, SetupIntake.ASSESSMENT)).toList();
  }

  private static String header(ConsumerRecord<byte[], byte[]> message, String name) {
    return text(message.headers().lastHeader(name).value());
  }

  private static String seed(String start) {
    try (var files = Files.list(Path.of("seeds/setups"))) {
      Path file =
          files.filter(f -> f.getFileName().toString().startsWith(start)).findFirst().orElseThrow();
      return Files.readString(file);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String text(byte[] utf8) {
    return new String(utf8, StandardCharsets.UTF_8);
  }
}
