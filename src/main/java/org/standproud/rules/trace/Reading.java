package org.standproud.rules.trace;

import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;

/**
 * A fact a condition read, with its value.
 *
 * @param fact the fact
 * @param value its value in this set-up
 */
public record Reading(Fact fact, Value value) {}
