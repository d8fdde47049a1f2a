package org.standproud.rules.engine;

/**
 * The finding of a flagging card in the working memory: it holds, may hold or cannot be judged.
 *
 * @param card id of the card
 */
public record Flagged(String card) {}
