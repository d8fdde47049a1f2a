package org.standproud.mechanics.force;

/**
 * One value of each thing the cutting force of a pass depends on.
 *
 * @param specificForcePa K kc1.1, corrections included, in Pa; of published coefficients the factor
 *     on them, without unit
 * @param exponent mc, without unit; of published coefficients nothing
 * @param feedM f_z in m
 * @param runOutM run-out in m
 * @param normalRatio normal to tangential force, without unit
 * @param liftRatio along-edge to tangential force, without unit; of published coefficients the
 *     factor on those along the edge
 */
public record ForceDraw(
    double specificForcePa,
    double exponent,
    double feedM,
    double runOutM,
    double normalRatio,
    double liftRatio) {}
