package org.standproud.rules.engine;

/** What lies in the working memory: a hearing, or what came out of one. */
interface WorkingMemoryItem {

  /** The hearing it belongs to. */
  Evaluation hearing();
}
