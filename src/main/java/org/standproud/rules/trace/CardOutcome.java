package org.standproud.rules.trace;

import org.standproud.rules.card.Severity;

/** What one card came to, in short: enough for a verdict. */
public sealed interface CardOutcome permits CardTrace, CardKind {

  /** The id of the card. */
  String id();

  /** What it came to. */
  Kind kind();

  /** Its severity after every change. */
  Severity severity();

  /** The share of the draws in which all its conditions hold, 0 to 1. */
  double share();

  /** Whether this is a finding to be told: the card speaks or is open, and is not silenced. */
  boolean isFinding();
}
