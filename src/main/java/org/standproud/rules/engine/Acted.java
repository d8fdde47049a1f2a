package org.standproud.rules.engine;

/**
 * A change of severity in the working memory.
 *
 * @param card id of the card that changes the finding of another
 */
public record Acted(String card) {}
