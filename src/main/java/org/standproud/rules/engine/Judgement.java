package org.standproud.rules.engine;

import org.standproud.rules.language.Truth;

/**
 * A judgement in the working memory, there as long as the card that derives it stands.
 *
 * @param hearing the hearing it was derived in
 * @param name its name
 * @param truth what can be said of it
 */
record Judgement(Evaluation hearing, String name, Truth truth) implements WorkingMemoryItem {}
