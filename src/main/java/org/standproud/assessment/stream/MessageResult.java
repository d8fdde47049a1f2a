package org.standproud.assessment.stream;

import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.standproud.audit.AuditRecord;

/** The result of a message. */
sealed interface MessageResult {

  /** The message. */
  ConsumerRecord<byte[], byte[]> message();

  /**
   * It was judged, and its record is stored.
   *
   * @param message the message
   * @param record the record of the answer
   */
  record Judged(ConsumerRecord<byte[], byte[]> message, AuditRecord record)
      implements MessageResult {}

  /**
   * It cannot be judged, however often it is tried.
   *
   * @param message the message
   * @param problem the problem
   */
  record Refused(ConsumerRecord<byte[], byte[]> message, Object problem) implements MessageResult {}
}
