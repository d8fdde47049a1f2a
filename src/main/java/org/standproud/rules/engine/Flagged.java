package org.standproud.rules.engine;

/**
 * The finding of a flagging card in the working memory, where another card may change it: it holds,
 * may hold or cannot be judged.
 *
 * @param hearing the hearing it was found in
 * @param card id of the card
 */
record Flagged(Evaluation hearing, String card) implements WorkingMemoryItem {}
