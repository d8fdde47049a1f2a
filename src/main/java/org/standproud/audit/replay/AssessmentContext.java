package org.standproud.audit.replay;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.standproud.audit.Acceptance;
import org.standproud.audit.Versions;

/**
 * What an answer says that comes neither from the set-up nor from the rules.
 *
 * @param id id of the answer
 * @param time when it was made
 * @param versions what it was made with
 * @param acceptances what people had accepted for its job order
 */
public record AssessmentContext(
    UUID id, Instant time, Versions versions, List<Acceptance> acceptances) {

  /** Copies the list. */
  public AssessmentContext {
    acceptances = List.copyOf(acceptances);
  }
}
