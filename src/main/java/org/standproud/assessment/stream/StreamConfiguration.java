package org.standproud.assessment.stream;

import java.util.Objects;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.apache.kafka.clients.admin.TopicDescription;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.kafka.core.KafkaAdmin;
import org.springframework.kafka.core.KafkaTemplate;
import org.springframework.kafka.listener.AfterRollbackProcessor;
import org.springframework.kafka.listener.DefaultAfterRollbackProcessor;
import org.springframework.util.backoff.ExponentialBackOff;
import org.standproud.assessment.ApiProperties;
import org.standproud.assessment.BodyText;
import org.standproud.assessment.RefusalRenderer;
import org.standproud.assessment.idempotency.IdempotentAssessor;
import tools.jackson.databind.json.JsonMapper;

/** The streaming intake, if standproud.stream.enabled is set; the broker is spring.kafka's. */
@Configuration(proxyBeanMethods = false)
@ConditionalOnProperty("standproud.stream.enabled")
class StreamConfiguration {

  private static final long FIRST_WAIT_MS = 500;
  private static final long LONGEST_WAIT_MS = 30_000;

  /** Several a core, because each also waits for the disk, where a group commits at once. */
  @Bean(destroyMethod = "shutdown")
  ExecutorService streamWorkers() {
    return Executors.newFixedThreadPool(8 * Runtime.getRuntime().availableProcessors());
  }

  @Bean
  SetupIntake setupIntake(
      IdempotentAssessor assessor,
      ApiProperties properties,
      RefusalRenderer problems,
      KafkaTemplate<byte[], byte[]> broker,
      KafkaAdmin admin,
      StreamTopics topics,
      JsonMapper json,
      ExecutorService streamWorkers) {
    MessageKey keys = new MessageKey(topicId(admin, topics.setups()), topics.caller());
    return new SetupIntake(
        new MessageAssessor(
            assessor,
            new BodyText(Math.toIntExact(properties.largestBody().toBytes())),
            problems,
            keys),
        broker,
        topics,
        json,
        streamWorkers);
  }

  /** Retries a group that could not be judged, without limit and at growing intervals. */
  @Bean
  AfterRollbackProcessor<Object, Object> groupComesAgain() {
    ExponentialBackOff waits = new ExponentialBackOff(FIRST_WAIT_MS, 2);
    waits.setMaxInterval(LONGEST_WAIT_MS);
    return new DefaultAfterRollbackProcessor<>(waits);
  }

  private static String topicId(KafkaAdmin admin, String topic) {
    TopicDescription description = admin.describeTopics(topic).get(topic);
    return Objects.requireNonNull(description, "the topic was described above")
        .topicId()
        .toString();
  }
}
