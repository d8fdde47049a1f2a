package org.standproud.advice;

import org.standproud.setup.Worded;

/** A grade of reliability, best first. */
public enum Grade implements Worded {
  /** Reliable. */
  HIGH("high", 1.0),
  /** Reliable with reserve. */
  MEDIUM("medium", 0.7),
  /** An indication. */
  LOW("low", 0.4);

  private static final double HIGH_FROM = 0.7;
  private static final double MEDIUM_FROM = 0.28;

  private final String words;
  private final double weight;

  Grade(String words, double weight) {
    this.words = words;
    this.weight = weight;
  }

  @Override
  public String words() {
    return words;
  }

  /**
   * The grade of something with three parts: the product of their weights (1, 0.7, 0.4), high from
   * 0.7, medium from 0.28.
   */
  static Grade product(Grade a, Grade b, Grade c) {
    // The tolerance keeps 1 x 1 x 0.7 high in any order of multiplication.
    double product = a.weight * b.weight * c.weight + 1e-9;
    return product >= HIGH_FROM ? HIGH : product >= MEDIUM_FROM ? MEDIUM : LOW;
  }
}
