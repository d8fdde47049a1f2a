package org.standproud.faults;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import org.apache.kafka.clients.consumer.KafkaConsumer;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.serialization.ByteArrayDeserializer;
import org.apache.kafka.common.serialization.ByteArraySerializer;
import org.standproud.api.RunningService;
import tools.jackson.databind.node.ObjectNode;

/** A plant that sends set-ups to a topic and reads the committed answers from another. */
final class Stream implements AutoCloseable {

  static final String SETUPS = "standproud.setups";
  static final String ANSWERS = "standproud.answers";
  static final String REFUSED = "standproud.refused";

  private static final int LONGEST_MS = 300_000;

  private final String address;
  private final Queue<Answer> answers = new ConcurrentLinkedQueue<>();
  private final Thread reader = new Thread(this::read, "answers");
  private volatile boolean over;

  /** An answer as it was read. */
  private record Answer(String key, String record) {}

  Stream(String address) {
    this.address = address;
    reader.start();
  }

  /** Sends set-ups, each under a key of its own, with a pause after each. */
  void send(int count, Duration pause) {
    Map<String, Object> settings =
        Map.of(
            "bootstrap.servers",
            address,
            "acks",
            "all",
            "enable.idempotence",
            true,
            "delivery.timeout.ms",
            LONGEST_MS);
    try (KafkaProducer<byte[], byte[]> producer =
        new KafkaProducer<>(settings, new ByteArraySerializer(), new ByteArraySerializer())) {
      for (int i = 0; i < count; i++) {
        String key = "streamed-" + i;
        producer.send(new ProducerRecord<>(SETUPS, utf8(key), utf8(setup(key))));
        Thread.sleep(pause.toMillis());
      }
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A set-up of the demo shop for a job order. */
  static String setup(String jobOrder) {
    ObjectNode setup = RunningService.seed(jobOrder.hashCode() % 2 == 0 ? "01" : "03");
    ((ObjectNode) setup.get("job")).put("jobOrder", jobOrder);
    return setup.toString();
  }

  /** The id of the record of an answer over HTTP. */
  static String id(HttpResponse<String> answer) {
    String self = answer.headers().firstValue("Location").orElseThrow();
    return self.substring(self.lastIndexOf('/') + 1);
  }

  /** How many answers were committed. */
  int answers() {
    return answers.size();
  }

  /** How many different set-ups they answer. */
  int answered() {
    return (int) answers.stream().map(Answer::key).distinct().count();
  }

  /** Ids of their records, as often as they came. */
  List<String> records() {
    return answers.stream().map(Answer::record).toList();
  }

  /** Reads on, for what should not come. */
  void readOn(Duration time) throws InterruptedException {
    Thread.sleep(time.toMillis());
  }

  private void read() {
    Map<String, Object> settings =
        Map.of(
            "bootstrap.servers",
            address,
            "group.id",
            UUID.randomUUID().toString(),
            "auto.offset.reset",
            "earliest",
            "isolation.level",
            "read_committed",
            "enable.auto.commit",
            false);
    try (KafkaConsumer<byte[], byte[]> consumer =
        new KafkaConsumer<>(settings, new ByteArrayDeserializer(), new ByteArrayDeserializer())) {
      consumer.assign(
          consumer.partitionsFor(ANSWERS).stream()
              .map(p -> new org.apache.kafka.common.TopicPartition(p.topic(), p.partition()))
              .collect(Collectors.toList()));
      consumer.seekToBeginning(consumer.assignment());
      while (!over) {
        consumer
            .poll(Duration.ofMillis(200))
            .forEach(
                a ->
                    answers.add(
                        new Answer(
                            text(a.key()), text(a.headers().lastHeader("assessment").value()))));
      }
    }
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String text(byte[] utf8) {
    return new String(utf8, StandardCharsets.UTF_8);
  }

  @Override
  public void close() throws InterruptedException {
    over = true;
    reader.join();
  }
}
