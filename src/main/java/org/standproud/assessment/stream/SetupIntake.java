package org.standproud.assessment.stream;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.springframework.kafka.annotation.KafkaListener;
import org.springframework.kafka.core.KafkaTemplate;
import tools.jackson.databind.json.JsonMapper;

/**
 * Judges the set-ups of a topic, a group at a time, and writes the answers to another.
 *
 * <p>The broker's transaction contains the answers and the read position; the record of each answer
 * is stored before, under the key of its message. After a failure the group is delivered again, and
 * the records found under its keys give the same answers: every message has one record and one
 * answer that consumers of committed messages see.
 */
final class SetupIntake {

  /** Header of a refused message with its RFC 9457 problem. */
  static final String PROBLEM = "problem";

  /** Header of an answer with the id of its record. */
  static final String ASSESSMENT = "assessment";

  private static final String CONTENT_TYPE = "content-type";

  private final MessageAssessor judging;
  private final KafkaTemplate<byte[], byte[]> broker;
  private final StreamTopics topics;
  private final JsonMapper json;
  private final Executor workers;

  SetupIntake(
      MessageAssessor judging,
      KafkaTemplate<byte[], byte[]> broker,
      StreamTopics topics,
      JsonMapper json,
      Executor workers) {
    this.judging = judging;
    this.broker = broker;
    this.topics = topics;
    this.json = json;
    this.workers = workers;
  }

  /**
   * Judges a group of messages on every core and sends the results in order.
   *
   * @throws RetryGroupException if one could not be judged now; the group is delivered again
   */
  @KafkaListener(topics = "${standproud.stream.setups}", batch = "true")
  void take(List<ConsumerRecord<byte[], byte[]>> group) {
    List<CompletableFuture<MessageResult>> first =
        group.stream()
            .map(message -> CompletableFuture.supplyAsync(() -> judging.judge(message), workers))
            .toList();
    CompletableFuture.allOf(first.toArray(CompletableFuture[]::new))
        .exceptionally(e -> null)
        .join();
    for (int i = 0; i < first.size(); i++) {
      // Two messages of a group with one key would collide: the second is judged alone.
      CompletableFuture<MessageResult> done = first.get(i);
      MessageResult outcome =
          done.isCompletedExceptionally() ? judging.judge(group.get(i)) : done.join();
      // A message that does not arrive keeps the transaction from being committed.
      CompletableFuture<?> unused = broker.send(message(outcome));
    }
  }

  private ProducerRecord<byte[], byte[]> message(MessageResult outcome) {
    ConsumerRecord<byte[], byte[]> from = outcome.message();
    if (outcome instanceof MessageResult.Judged judged) {
      ProducerRecord<byte[], byte[]> answer =
          new ProducerRecord<>(
              topics.answers(), from.key(), judged.record().account().answer().utf8());
      answer.headers().add(CONTENT_TYPE, utf8("application/json"));
      answer.headers().add(ASSESSMENT, utf8(judged.record().id().toString()));
      return answer;
    }
    MessageResult.Refused refused = (MessageResult.Refused) outcome;
    ProducerRecord<byte[], byte[]> back =
        new ProducerRecord<>(topics.refused(), null, from.key(), from.value(), from.headers());
    back.headers().add(PROBLEM, json.writeValueAsBytes(refused.problem()));
    return back;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
