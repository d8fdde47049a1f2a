package org.standproud.advice.compare;

import org.jspecify.annotations.Nullable;

/**
 * What became of one card from one set-up to the other.
 *
 * @param card id of the card
 * @param title its claim
 * @param move what happened
 * @param before severity in the one set-up, with its kind, such as "stop (fail)"; null if no
 *     finding
 * @param after the same in the other
 * @param distanceBefore how far it was from flipping in the one; null if no number decides
 * @param distanceAfter the same in the other
 */
public record FindingMove(
    String card,
    String title,
    Move move,
    @Nullable String before,
    @Nullable String after,
    @Nullable Reserve distanceBefore,
    @Nullable Reserve distanceAfter) {}
