package org.standproud.rules.trace;

import org.standproud.rules.card.Severity;
import org.standproud.rules.language.Truth;

/**
 * What one card came to, without the reasons.
 *
 * @param id the id of the card
 * @param kind what it came to
 * @param truth what can be said of all its conditions and its scope together
 * @param severity its severity after every change
 * @param isFinding whether it is to be told: the card flags, and holds, may hold or is open
 */
public record CardKind(String id, Kind kind, Truth truth, Severity severity, boolean isFinding)
    implements CardOutcome {}
