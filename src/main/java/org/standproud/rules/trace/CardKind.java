package org.standproud.rules.trace;

import org.standproud.rules.card.Severity;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Truth;

/**
 * What one card came to, without the reasons.
 *
 * @param id the id of the card
 * @param kind what it came to
 * @param draws in which draws all its conditions and its scope hold
 * @param severity its severity after every change
 * @param isFinding whether it is to be told: the card speaks or is open, and is not silenced
 */
public record CardKind(String id, Kind kind, DrawTruth draws, Severity severity, boolean isFinding)
    implements CardOutcome {

  /** All of the draws in one word. */
  public Truth truth() {
    return draws.truth();
  }

  @Override
  public double share() {
    return draws.share();
  }

  /** The same, kept back because another card says it. */
  public CardKind silenced(String by) {
    return new CardKind(id, kind, draws, severity, false);
  }
}
