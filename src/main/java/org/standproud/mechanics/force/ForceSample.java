package org.standproud.mechanics.force;

/**
 * The force on the work at one moment of a revolution.
 *
 * @param turnRad angle of tooth 0 in the feed frame in rad
 * @param force in the vise frame
 */
public record ForceSample(double turnRad, ForceVector force) {}
