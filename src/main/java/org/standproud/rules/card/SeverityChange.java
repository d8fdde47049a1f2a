package org.standproud.rules.card;

/**
 * What a card does to the finding of another.
 *
 * @param overrides true if it sets the severity outright; false if it only eases
 * @param card the other card
 * @param to the severity given
 * @param because why, in one sentence
 */
public record SeverityChange(boolean overrides, Written card, Severity to, String because) {}
