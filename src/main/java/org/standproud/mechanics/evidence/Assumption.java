package org.standproud.mechanics.evidence;

/**
 * What was taken for an input that the caller did not give.
 *
 * @param input the input, as a path in the request, such as {@code hold.jawFriction}
 * @param statement what was assumed, with the band and its unit, in one sentence
 * @param source where the band comes from
 */
public record Assumption(String input, String statement, String source) {}
