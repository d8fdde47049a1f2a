package org.standproud.setup;

/**
 * One point of the power curve of a spindle; between points power goes linearly with speed.
 *
 * @param speedRevPerS spindle speed in 1/s
 * @param powerW power at the motor in W
 */
public record PowerPoint(double speedRevPerS, double powerW) {}
