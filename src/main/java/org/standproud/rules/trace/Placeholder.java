package org.standproud.rules.trace;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Value;
import org.standproud.setup.units.Dimension;

/**
 * The value of a placeholder of a message.
 *
 * @param name the fact or limit named
 * @param value its value in this set-up
 * @param dimension its dimension, or null if it is not a number
 * @param written the limit as written in the card, or null for a fact
 */
public record Placeholder(
    String name, Value value, @Nullable Dimension dimension, @Nullable String written) {}
