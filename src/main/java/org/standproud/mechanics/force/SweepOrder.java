package org.standproud.mechanics.force;

/**
 * How finely a pass is sampled. On random passes the coarse order misses at most 2.1 % of the
 * greatest force in the plane against the fine one, and then only where run-out lets a tooth begin
 * inside a small arc (test {@code SweepOrderTest}); the bands carry 2 % for what lies between their
 * corners.
 *
 * @param stepsAtEachEnd steps of the lead-in and of the run-out, at least 1
 * @param steadyStepRad greatest step of the turn in steady cutting in rad
 * @param endStepRad the same in the lead-in and the run-out
 */
record SweepOrder(int stepsAtEachEnd, double steadyStepRad, double endStepRad) {

  /** For evidence. */
  static final SweepOrder EVIDENCE = new SweepOrder(5, Math.toRadians(3), Math.toRadians(6));

  /** For curves along the pass. */
  static final SweepOrder DRAWING = new SweepOrder(24, Math.toRadians(3), Math.toRadians(3));

  /** Fine, to see what the other leaves out. */
  static final SweepOrder FINE = new SweepOrder(40, Math.toRadians(0.5), Math.toRadians(0.5));
}
