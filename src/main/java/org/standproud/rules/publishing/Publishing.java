package org.standproud.rules.publishing;

/** How many persons it takes to put cards into service. */
public enum Publishing {
  /** Whoever proposes may publish. */
  ONE_PERSON,
  /** Somebody else than the proposer has to publish, also to roll back. */
  TWO_PERSONS
}
