package org.standproud.assessment.stream;

import java.nio.charset.StandardCharsets;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.common.header.Header;
import org.standproud.assessment.idempotency.IdempotencyKey;

/**
 * Names a message, so that it is judged once however often it is delivered: by the key its producer
 * gave it, or by its place on its topic.
 */
final class MessageKey {

  private final String topicId;
  private final String caller;

  /**
   * Names for the messages of one topic.
   *
   * @param topicId the broker's id of the topic, which a topic made anew under an old name does not
   *     share
   * @param caller whose keys they are
   */
  MessageKey(String topicId, String caller) {
    this.topicId = topicId;
    this.caller = caller;
  }

  /**
   * The key of a message.
   *
   * @throws org.standproud.refusal.BadParameterException when its producer gave it one that is no
   *     key
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
