package org.standproud.audit.replay;

import java.util.Optional;
import org.standproud.audit.Results;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.rules.engine.RuleBase;

/** The parts of the program that determine an answer. */
public interface Engine {

  /** Its version. */
  String version();

  /** Revision of the catalogue that resolves requests. */
  String catalogue();

  /**
   * Computes an answer.
   *
   * @param setup a recorded set-up
   * @param rules the rule base
   * @param occasion the rest of the answer: id, time, job
   * @throws IllegalArgumentException if this program cannot read the set-up
   */
  AssessmentResult make(CanonicalJson setup, RuleBase rules, AssessmentContext occasion);

  /**
   * Recorded results in the form of {@link AssessmentResult#results()}.
   *
   * @param results the results of a record, in short or in full
   * @throws IllegalArgumentException if this program cannot read them
   */
  CanonicalJson inShort(Results results);

  /**
   * Resolves a request with today's catalogue.
   *
   * @param request a recorded request
   * @return the set-up; empty if it is refused today
   */
  Optional<CanonicalJson> resolve(CanonicalJson request);
}
