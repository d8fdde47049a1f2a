package org.standproud.rules.trace;

import org.standproud.rules.card.Severity;

/** The outcome of one card, enough for a verdict. */
public sealed interface CardOutcome permits CardTrace, CardKind {

  /** The id of the card. */
  String id();

  /** Its kind. */
  Kind kind();

  /** Its severity after all changes. */
  Severity severity();

  /** The share of the draws in which all its conditions hold, 0 to 1. */
  double share();

  /** Whether it is reported: the card fires or is open, and is not silenced. */
  boolean isFinding();
}
