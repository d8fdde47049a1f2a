package org.standproud.audit.replay;

import java.util.Optional;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.rules.engine.RuleBase;

/** The parts of the program on which an answer depends. */
public interface Engine {

  /** Its version. */
  String version();

  /** Revision of the catalogue it resolves requests against. */
  String catalogue();

  /**
   * Makes an answer.
   *
   * @param setup a set-up as records keep it
   * @param rules what judges it
   * @param occasion what else the answer says
   * @throws IllegalArgumentException when this program cannot read the set-up
   */
  AssessmentResult make(CanonicalJson setup, RuleBase rules, AssessmentContext occasion);

  /**
   * Resolves a request against the catalogue of today.
   *
   * @param request a request as records keep it
   * @return the set-up; empty when it is refused today
   */
  Optional<CanonicalJson> resolve(CanonicalJson request);
}
