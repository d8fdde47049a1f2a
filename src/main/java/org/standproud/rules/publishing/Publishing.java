package org.standproud.rules.publishing;

/** How many persons it takes to put cards into service. */
public enum Publishing {
  /** Whoever proposes may publish. */
  ONE_PERSON,
  /**
   * Another person than the proposer has to publish what takes away or weakens a stop, with a
   * reason that names each such stop, and after the impact on past jobs was shown.
   */
  TWO_FOR_STOPS,
  /** The same for every publication, also to roll back; reason and impact for stops. */
  TWO_PERSONS
}
