package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.serialization.ByteArraySerializer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.kafka.test.EmbeddedKafkaBroker;
import org.springframework.kafka.test.EmbeddedKafkaKraftBroker;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The packaged program, out of which the build cuts parts of libraries: what is left still reads
 * every compression of a broker, prints a sheet and serves contract and metrics.
 */
@IntegrationTest
@EnabledIfSystemProperty(named = PackagedJarTest.JAR, matches = ".+", disabledReason = "no package")
class PackagedJarTest {

  /** Names the package; {@code mvn verify} sets it. */
  static final String JAR = "packaged.jar";

  /** Most bytes of the package, with the client of the broker in it. */
  private static final long LARGEST = 75_000_000;

  private final Path jar = Path.of(System.getProperty(JAR));

  private @TempDir Path records;

  @Test
  void theProgramStaysSmall() throws IOException {
    assertThat(Files.size(jar)).isLessThan(LARGEST);
  }

  @Test
  void nothingThatIsUsedWasCutOut() throws Exception {
    withBroker(
        broker -> {
          try (ServiceProcess service =
              ServiceProcess.startPackaged(
                  jar,
                  records,
                  "-XX:TieredStopAtLevel=1",
                  "--standproud.stream.enabled=true",
                  "--spring.kafka.bootstrap-servers=" + broker.getBrokersAsString())) {
            readsEveryCompression(service.caller(), broker);
            printsASheet(service.caller());
            assertThat(service.caller().get("/v3/api-docs.yaml").body()).startsWith("openapi: 3.1");
            assertThat(service.caller().get("/actuator/prometheus").body())
                .contains("# TYPE jvm_memory_used_bytes gauge");
          } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
          }
        });
  }

  private static void withBroker(Consumer<EmbeddedKafkaBroker> use) {
    EmbeddedKafkaBroker broker = new EmbeddedKafkaKraftBroker(1, 1, topics());
    broker.brokerProperties(
        Map.of(
            "transaction.state.log.replication.factor", "1",
            "transaction.state.log.min.isr", "1",
            "group.initial.rebalance.delay.ms", "0"));
    broker.afterPropertiesSet();
    try {
      use.accept(broker);
    } finally {
      broker.destroy();
    }
  }

  private static String[] topics() {
    return new String[] {"standproud.setups", "standproud.answers", "standproud.refused"};
  }

  /** The compressions of Kafka's producer setting {@code compression.type}. */
  private static void readsEveryCompression(
      RunningService.Caller service, EmbeddedKafkaBroker broker) {
    TreeSet<String> sent = new TreeSet<>(List.of("none", "gzip", "snappy", "lz4", "zstd"));
    for (String compression : sent) {
      ObjectNode setup = RunningService.seed("01");
      setup.putObject("job").put("jobOrder", compression);
      try (KafkaProducer<byte[], byte[]> producer =
          new KafkaProducer<>(
              Map.of(
                  "bootstrap.servers",
                  broker.getBrokersAsString(),
                  "compression.type",
                  compression),
              new ByteArraySerializer(),
              new ByteArraySerializer())) {
        producer.send(
            new ProducerRecord<>(topics()[0], setup.toString().getBytes(StandardCharsets.UTF_8)));
      }
    }
    await()
        .atMost(Duration.ofMinutes(1))
        .untilAsserted(() -> assertThat(jobs(service)).isEqualTo(sent));
  }

  private static TreeSet<String> jobs(RunningService.Caller service) {
    TreeSet<String> jobs = new TreeSet<>();
    for (JsonNode one : RunningService.json(service.get("/v1/assessments")).get("assessments")) {
      jobs.add(one.path("jobOrder").asString());
    }
    return jobs;
  }

  private static void printsASheet(RunningService.Caller service)
      throws IOException, InterruptedException {
    String id =
        RunningService.json(service.assess(RunningService.seed("08"))).get("id").stringValue();
    HttpResponse<byte[]> sheet =
        HttpClient.newHttpClient()
            .send(
                service.to("/assessments/" + id + "/sheet.pdf").build(),
                BodyHandlers.ofByteArray());
    try (PDDocument pages = Loader.loadPDF(sheet.body())) {
      assertThat(new PDFTextStripper().getText(pages)).containsIgnoringCase("do not run");
    }
  }
}
