package org.standproud.mechanics.sampling;

/**
 * What one unknown contributes to the doubt about a hold.
 *
 * @param unknown which
 * @param share its first-order share of the variance of the rank of the margin, 0 to 1
 */
public record Contribution(Unknown unknown, double share) {}
