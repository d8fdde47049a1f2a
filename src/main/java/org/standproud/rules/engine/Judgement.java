package org.standproud.rules.engine;

import org.standproud.rules.language.DrawTruth;

/**
 * A judgement in the working memory, there as long as the card that derives it stands.
 *
 * @param hearing the hearing it was derived in
 * @param name its name
 * @param truth in which draws it holds
 */
record Judgement(Evaluation hearing, String name, DrawTruth truth) implements WorkingMemoryItem {}
