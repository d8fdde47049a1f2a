package org.standproud.assessment.stream;

import java.nio.charset.StandardCharsets;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.common.header.Header;
import org.standproud.assessment.idempotency.IdempotencyKey;

/**
 * Identifies a message, so that it is judged once however often it is delivered: by its producer's
 * key, or by its position in its topic.
 */
final class MessageKey {

  private final String topicId;
  private final String caller;

  /**
   * Creates keys for one topic.
   *
   * @param topicId the broker's id of the topic, which differs for a topic recreated under the same
   *     name
   * @param caller the caller of the keys
   */
  MessageKey(String topicId, String caller) {
    this.topicId = topicId;
    this.caller = caller;
  }

  /**
   * The key of a message.
   *
   * @throws org.standproud.refusal.BadParameterException if its producer's key is invalid
   */
  IdempotencyKey of(ConsumerRecord<byte[], byte[]> message) {
    Header given = message.headers().lastHeader(IdempotencyKey.HEADER);
    IdempotencyKey named =
        given == null
            ? null
            : IdempotencyKey.read(caller, new String(given.value(), StandardCharsets.UTF_8));
    return named == null ? new IdempotencyKey(caller, place(message)) : named;
  }

  private String place(ConsumerRecord<byte[], byte[]> message) {
    return topicId + "/" + message.partition() + "/" + message.offset();
  }
}
