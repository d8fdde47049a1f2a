package org.standproud.advice;

import org.jspecify.annotations.Nullable;

/**
 * A value in the caller's units.
 *
 * @param name the fact
 * @param value likely number, the word, true or false, or the numbers of a list in words; null if
 *     not known
 * @param low least number; null if the value is known exactly or is no number
 * @param high greatest number; null likewise
 * @param unit unit of the numbers; null if they have none
 * @param measure what to measure or state; null unless the value is not known
 */
public record Quantity(
    String name,
    @Nullable Object value,
    @Nullable Double low,
    @Nullable Double high,
    @Nullable String unit,
    @Nullable String measure) {}
