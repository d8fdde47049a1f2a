package org.standproud.rules.engine;

import org.standproud.rules.language.DrawTruth;

/**
 * A judgement in the working memory, present as long as the card that derives it holds.
 *
 * @param evaluation its evaluation
 * @param name its name
 * @param truth the draws in which it holds
 */
record Judgement(Evaluation evaluation, String name, DrawTruth truth)
    implements WorkingMemoryItem {}
