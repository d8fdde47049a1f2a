package org.standproud.advice.job;

import org.jspecify.annotations.Nullable;
import org.standproud.advice.Verdict;

/**
 * Another way to hold the plate for the same face that was tried and is no better.
 *
 * @param holding what it is
 * @param verdict the worst verdict of its passes
 * @param chance the least chance of its passes, 0 to 1
 * @param cutter its cutter
 * @param minutes likely time of its passes
 * @param stop id of the first stop against its worst pass; absent if there is none
 */
public record TriedHold(
    String holding,
    Verdict verdict,
    double chance,
    String cutter,
    double minutes,
    @Nullable String stop) {}
