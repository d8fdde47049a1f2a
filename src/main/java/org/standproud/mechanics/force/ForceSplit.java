package org.standproud.mechanics.force;

/**
 * How the other two directions follow the tangential one: factors on the normal and along-edge
 * force of an {@link EdgeLaw}.
 *
 * @param normal factor normal to the edge, without unit, not negative
 * @param along factor along the edge, without unit, positive where it lifts the work
 */
public record ForceSplit(double normal, double along) {}
