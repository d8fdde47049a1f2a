package org.standproud.assessment.stream;

import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.standproud.audit.AuditRecord;

/** What came of a message. */
sealed interface MessageResult {

  /** The message. */
  ConsumerRecord<byte[], byte[]> message();

  /**
   * It was judged, and the answer is on disk.
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
   * @param problem why
   */
  record Refused(ConsumerRecord<byte[], byte[]> message, Object problem) implements MessageResult {}
}
