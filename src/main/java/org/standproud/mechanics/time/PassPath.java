package org.standproud.mechanics.time;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Setup;

/**
 * The straight way of the cutter axis in one pass: lead-in, length of the stock, run-out.
 *
 * <p>Lead-in and run-out go from the cutter axis to the end of the stock, so half of the cutter
 * diameter is part of each. The run-out is half of the diameter: then the whole cutter has left the
 * stock.
 *
 * @param leadInM from the cutter axis at the start to the first end of the stock in m
 * @param stockLengthM length of the stock along X in m
 * @param runOutM from the last end of the stock to the cutter axis at the stop in m
 */
public record PassPath(double leadInM, double stockLengthM, double runOutM) {

  /**
   * Refuses what is no pass.
   *
   * @throws OutsideValidity if a length is negative or beyond 10 m, or the stock has none
   */
  public PassPath {
    OutsideValidity.within("lead-in", leadInM, 0, 10, "m");
    OutsideValidity.within("stock length", stockLengthM, 1e-4, 10, "m");
    OutsideValidity.within("run-out of the pass", runOutM, 0, 10, "m");
  }

  /**
   * The path of a set-up.
   *
   * @throws OutsideValidity if its lengths are no pass
   */
  public static PassPath of(Setup setup) {
    return new PassPath(
        setup.cut().leadInM(), setup.stock().lengthM(), setup.cutter().diameterM() / 2);
  }

  /** Whole way of the cutter axis in m. */
  public double lengthM() {
    return leadInM + stockLengthM + runOutM;
  }
}
