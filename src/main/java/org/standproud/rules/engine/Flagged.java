package org.standproud.rules.engine;

/**
 * The finding of a card in the working memory, where another card may change it: it holds, may hold
 * or cannot be judged.
 *
 * @param evaluation its evaluation
 * @param card id of the card
 */
record Flagged(Evaluation evaluation, String card) implements WorkingMemoryItem {}
