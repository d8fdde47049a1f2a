package org.standproud.rules.language;

/** The judgements derived so far. */
@FunctionalInterface
public interface Judgements {

  /** No judgement is known. */
  Judgements NONE = name -> DrawTruth.UNKNOWN;

  /**
   * The draws in which a judgement holds.
   *
   * @param name its name
   */
  DrawTruth of(String name);
}
