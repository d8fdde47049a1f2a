package org.standproud.rules.card;

/**
 * What a card does to the finding of another. A change that lowers the severity acts only when its
 * card holds for certain; one that raises it acts already when the card may hold.
 *
 * @param overrides true if it sets the severity outright; false if it only eases
 * @param card the other card
 * @param to the severity given
 * @param because why, in one sentence
 */
public record SeverityChange(boolean overrides, Written card, Severity to, String because) {}
