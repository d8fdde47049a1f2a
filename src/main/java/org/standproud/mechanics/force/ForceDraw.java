package org.standproud.mechanics.force;

/**
 * One value of each thing the cutting force of a pass depends on.
 *
 * @param specificForcePa K kc1.1, corrections included, in Pa
 * @param exponent mc, without unit
 * @param feedM f_z in m
 * @param runOutM run-out in m
 * @param normalRatio normal to tangential force, without unit
 * @param liftRatio along-edge to tangential force, without unit
 */
public record ForceDraw(
    double specificForcePa,
    double exponent,
    double feedM,
    double runOutM,
    double normalRatio,
    double liftRatio) {}
