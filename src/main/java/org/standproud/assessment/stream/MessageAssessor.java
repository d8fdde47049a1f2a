package org.standproud.assessment.stream;

import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.standproud.assessment.BodyText;
import org.standproud.assessment.RefusalRenderer;
import org.standproud.assessment.SetupRequest;
import org.standproud.assessment.idempotency.IdempotencyKey;
import org.standproud.assessment.idempotency.IdempotentAssessor;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;

/** Judges one message like a single request. */
final class MessageAssessor {

  private final IdempotentAssessor assessor;
  private final BodyText bodies;
  private final RefusalRenderer problems;
  private final MessageKey keys;

  MessageAssessor(
      IdempotentAssessor assessor, BodyText bodies, RefusalRenderer problems, MessageKey keys) {
    this.assessor = assessor;
    this.bodies = bodies;
    this.problems = problems;
    this.keys = keys;
  }

  /**
   * Judges a message.
   *
   * @throws RetryGroupException if it could not be judged for a reason outside the message
   */
  MessageResult judge(ConsumerRecord<byte[], byte[]> message) {
    try {
      IdempotencyKey key = keys.of(message);
      byte[] body = message.value() == null ? new byte[0] : message.value();
      SetupRequest request = SetupRequest.of(bodies.of(body));
      return new MessageResult.Judged(
          message, assessor.assess(request, key.caller(), key).record());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new RetryGroupException(e);
    } catch (RuntimeException e) {
      if (passes(e)) {
        throw new RetryGroupException(e);
      }
      return new MessageResult.Refused(message, problems.render(e).body());
    }
  }

  /** A database comes back, and a key in use becomes free. */
  private static boolean passes(RuntimeException e) {
    return !(e instanceof Refusal refusal)
        || refusal.kind().passes()
        || refusal.kind() == RefusalKind.NOT_READY
        || refusal.kind() == RefusalKind.CONFLICT;
  }
}
