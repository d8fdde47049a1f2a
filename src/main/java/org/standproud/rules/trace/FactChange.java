package org.standproud.rules.trace;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;

/**
 * The change of one fact at which a comparison flips, in the SI unit of the fact.
 *
 * @param fact the fact
 * @param from its likely value now
 * @param likely value at which the comparison flips, every other fact at its likely value; null if
 *     there is none in the valid range
 * @param certain value at which the comparison begins or ceases to hold in more of the draws than
 *     the level of the card; null if there is none
 */
public record FactChange(
    Fact fact, double from, @Nullable Double likely, @Nullable Double certain) {}
