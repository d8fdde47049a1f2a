package org.standproud.api.stream;

import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.standproud.api.assessing.SetupRequest;
import org.standproud.api.assessments.Bodies;
import org.standproud.api.idempotency.IdempotencyKey;
import org.standproud.api.idempotency.OnceOnly;
import org.standproud.api.problem.ProblemTelling;

/** Judges one message as a request of its own would be. */
final class MessageJudging {

  private final OnceOnly assessor;
  private final Bodies bodies;
  private final ProblemTelling problems;
  private final MessageKey keys;

  MessageJudging(OnceOnly assessor, Bodies bodies, ProblemTelling problems, MessageKey keys) {
    this.assessor = assessor;
    this.bodies = bodies;
    this.problems = problems;
    this.keys = keys;
  }

  /**
   * Judges a message.
   *
   * @throws TryAgainLater when it could not be judged for a reason that is not in the message
   */
  Outcome judge(ConsumerRecord<byte[], byte[]> message) {
    try {
      IdempotencyKey key = keys.of(message);
      byte[] body = message.value() == null ? new byte[0] : message.value();
      SetupRequest request = SetupRequest.of(bodies.text(body));
      return new Outcome.Judged(message, assessor.assess(request, key.caller(), key).record());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new TryAgainLater(e);
    } catch (RuntimeException e) {
      ProblemDetail problem = problems.of(e);
      if (passes(problem.getStatus())) {
        throw new TryAgainLater(e);
      }
      return new Outcome.Refused(message, problem);
    }
  }

  /** A store that is away comes back, and a key in use is let go. */
  private static boolean passes(int status) {
    return status >= HttpStatus.INTERNAL_SERVER_ERROR.value()
        || status == HttpStatus.CONFLICT.value();
  }
}
