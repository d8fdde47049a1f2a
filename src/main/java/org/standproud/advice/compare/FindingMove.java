package org.standproud.advice.compare;

import org.jspecify.annotations.Nullable;

/**
 * How one card's finding differs between two set-ups.
 *
 * @param card id of the card
 * @param title its claim
 * @param move what happened
 * @param before severity in the first set-up, with its kind, such as "stop (fail)"; null if no
 *     finding
 * @param after the same in the second
 * @param distanceBefore how far it was from flipping in the first; null if no number decides
 * @param distanceAfter the same in the second
 */
public record FindingMove(
    String card,
    String title,
    Move move,
    @Nullable String before,
    @Nullable String after,
    @Nullable Reserve distanceBefore,
    @Nullable Reserve distanceAfter) {}
