package org.standproud.rules.engine;

/** An object in the working memory: an evaluation, or a result of one. */
interface WorkingMemoryItem {

  /** Its evaluation. */
  Evaluation evaluation();
}
