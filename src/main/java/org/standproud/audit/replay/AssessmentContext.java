package org.standproud.audit.replay;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.standproud.audit.Acceptance;
import org.standproud.audit.Versions;

/**
 * The parts of an answer that come neither from the set-up nor from the rules.
 *
 * @param id id of the answer
 * @param time time of the answer
 * @param versions the versions that produce it
 * @param acceptances the acceptances for its job order
 */
public record AssessmentContext(
    UUID id, Instant time, Versions versions, List<Acceptance> acceptances) {

  /** Copies the list. */
  public AssessmentContext {
    acceptances = List.copyOf(acceptances);
  }
}
