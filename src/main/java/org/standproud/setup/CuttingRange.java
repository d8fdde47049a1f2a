package org.standproud.setup;

/**
 * The published range of cutting data for one stock and one tool material.
 *
 * @param leastSpeedMPerS least v_c in m/s
 * @param greatestSpeedMPerS greatest v_c in m/s
 * @param leastFeedPerToothM least f_z in m
 * @param greatestFeedPerToothM greatest f_z in m
 */
public record CuttingRange(
    double leastSpeedMPerS,
    double greatestSpeedMPerS,
    double leastFeedPerToothM,
    double greatestFeedPerToothM) {}
