package org.standproud.rules.language;

/** The judgements derived so far. */
@FunctionalInterface
public interface Judgements {

  /** No judgement is known. */
  Judgements NONE = name -> Truth.UNKNOWN;

  /**
   * The truth of a judgement.
   *
   * @param name its name
   */
  Truth of(String name);
}
