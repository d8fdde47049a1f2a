package org.standproud.rules.card;

/**
 * The effect of a card on the finding of another. A change that lowers the severity acts only if
 * its card holds for certain; one that raises it already acts if the card may hold.
 *
 * @param overrides true if it sets the severity outright; false if it only eases
 * @param card the other card
 * @param to the new severity
 * @param because the reason, in one sentence
 */
public record SeverityChange(boolean overrides, Written card, Severity to, String because) {}
