package org.standproud.rules.language;

/** The judgements derived so far. */
@FunctionalInterface
public interface Judgements {

  /** No judgement is known. */
  Judgements NONE = name -> DrawTruth.UNKNOWN;

  /**
   * In which draws a judgement holds.
   *
   * @param name its name
   */
  DrawTruth of(String name);
}
