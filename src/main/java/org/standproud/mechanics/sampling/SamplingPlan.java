package org.standproud.mechanics.sampling;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.evidence.Sample;

/**
 * How to sample.
 *
 * @param samples how many set-ups are drawn, 100 to 1,000,000
 * @param seed the same seed gives the same answer
 * @param leastMargin the margin from which on a hold holds, 0.1 to 100; 1 hides no safety factor
 */
public record SamplingPlan(int samples, long seed, double leastMargin) {

  /** The draws of the evidence against a margin of 1. */
  public static final SamplingPlan USUAL = new SamplingPlan(Sample.DRAWS, 20_261_125L, 1);

  /**
   * Refuses a plan that says nothing.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public SamplingPlan {
    within("number of samples", samples, 100, 1_000_000, "");
    within("least margin", leastMargin, 0.1, 100, "");
  }
}
