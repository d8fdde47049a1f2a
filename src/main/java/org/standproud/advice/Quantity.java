package org.standproud.advice;

import org.jspecify.annotations.Nullable;

/**
 * A fact in the caller's units.
 *
 * @param name name of the fact
 * @param value likely number, the word, true or false, or the numbers of a list in words; absent if
 *     not known
 * @param low least number; absent if the value is known exactly or is no number
 * @param high greatest number; absent likewise
 * @param unit unit of the numbers; absent if they have none
 * @param measure what to measure or state; only if the value is not known
 */
public record Quantity(
    String name,
    @Nullable Object value,
    @Nullable Double low,
    @Nullable Double high,
    @Nullable String unit,
    @Nullable String measure) {}
