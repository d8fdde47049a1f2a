package org.standproud.rules.trace;

import org.standproud.rules.card.Severity;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Truth;

/**
 * The outcome of one card, without reasons.
 *
 * @param id the id of the card
 * @param kind its kind
 * @param draws the draws in which its scope and all its conditions hold
 * @param severity its severity after all changes
 * @param isFinding whether it is reported: the card fires or is open, and is not silenced
 */
public record CardKind(String id, Kind kind, DrawTruth draws, Severity severity, boolean isFinding)
    implements CardOutcome {

  /** The truth over all draws. */
  public Truth truth() {
    return draws.truth();
  }

  @Override
  public double share() {
    return draws.share();
  }

  /** A copy silenced by another card. */
  public CardKind silenced(String by) {
    return new CardKind(id, kind, draws, severity, false);
  }
}
