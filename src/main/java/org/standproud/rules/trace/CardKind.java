package org.standproud.rules.trace;

import org.standproud.rules.card.Severity;

/**
 * What one card came to, without the reasons.
 *
 * @param id the id of the card
 * @param kind what it came to
 * @param severity its severity after every change
 * @param isFinding whether it is to be told: the card flags, and holds, may hold or is open
 */
public record CardKind(String id, Kind kind, Severity severity, boolean isFinding)
    implements CardOutcome {}
