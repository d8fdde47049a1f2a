package org.standproud.events;

import java.util.Arrays;
import java.util.Optional;

/** The events a shop system can subscribe to. */
public enum EventType {
  /** A set-up was judged. */
  ASSESSMENT_JUDGED("org.standproud.assessment.judged"),
  /** A person accepted a finding. */
  FINDING_ACCEPTED("org.standproud.finding.accepted"),
  /** An acceptance was withdrawn. */
  ACCEPTANCE_WITHDRAWN("org.standproud.acceptance.withdrawn"),
  /** Texts of old records were removed. */
  RECORDS_WITHHELD("org.standproud.records.withheld"),
  /** A rule base passed the gate and went into service. */
  RULE_BASE_PUBLISHED("org.standproud.rulebase.published");

  private final String code;

  EventType(String code) {
    this.code = code;
  }

  /** The type of the CloudEvent. */
  public String code() {
    return code;
  }

  public static Optional<EventType> of(String code) {
    return Arrays.stream(values()).filter(t -> t.code.equals(code)).findFirst();
  }
}
