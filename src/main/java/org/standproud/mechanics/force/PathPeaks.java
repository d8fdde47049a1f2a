package org.standproud.mechanics.force;

/**
 * The extremes of the force on the work over a whole pass, in the vise frame, in N.
 *
 * @param leastXN least along the jaws
 * @param greatestXN greatest along the jaws
 * @param leastYN least across the stock, negative away from the fixed jaw
 * @param greatestYN greatest across the stock
 * @param leastZN least upright, negative downward
 * @param greatestZN greatest upright
 */
public record PathPeaks(
    double leastXN,
    double greatestXN,
    double leastYN,
    double greatestYN,
    double leastZN,
    double greatestZN) {}
