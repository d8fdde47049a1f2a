package org.standproud.rules.publishing;

/** How many persons it takes to put cards into service. */
public enum Publishing {
  /** The proposer may publish. */
  ONE_PERSON,
  /**
   * Someone other than the proposer must publish a change that removes or weakens a stop, with a
   * reason that names each such stop, and after the impact on past jobs was shown.
   */
  TWO_FOR_STOPS,
  /** The same for every publication and restoration; reason and impact for stops. */
  TWO_PERSONS
}
