package org.standproud.mechanics.vibration;

import java.util.List;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * A force on the stock that repeats with every turn of the spindle.
 *
 * @param forceN force across the stock at equal steps over one turn, N, at least 8 and at most 4096
 *     samples, either sign
 * @param revPerS spindle speed, 1/s
 * @param teeth teeth of the cutter
 * @param modes modes of the stock at the place of the force, normal to its sides
 * @param flexibilityMPerN static deflection per force there, m/N; what the modes leave of it
 *     follows the force without delay
 * @param dampingRatio damping over critical
 */
public record ForcedInput(
    double[] forceN,
    double revPerS,
    int teeth,
    List<ModeBand> modes,
    Band flexibilityMPerN,
    Band dampingRatio) {

  /**
   * Copies the samples and refuses what cannot be judged.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public ForcedInput {
    forceN = forceN.clone();
    modes = List.copyOf(modes);
    OutsideValidity.within("force samples", forceN.length, 8, 4096, "");
    withinReach(forceN);
    OutsideValidity.within("spindle speed", revPerS, 1e-2, 1e4, "1/s");
    OutsideValidity.within("teeth", teeth, 1, 200, "");
    OutsideValidity.within("modes", modes.size(), 1, 50, "");
    OutsideValidity.within("flexibility", flexibilityMPerN.low(), 0, 1, "m/N");
    OutsideValidity.within("flexibility", flexibilityMPerN.high(), 0, 1, "m/N");
    OutsideValidity.within("damping ratio", dampingRatio.low(), 1e-4, 0.5, "");
    OutsideValidity.within("damping ratio", dampingRatio.high(), 1e-4, 0.5, "");
  }

  /** The samples, copied. */
  @Override
  public double[] forceN() {
    return forceN.clone();
  }

  /** How many samples the force has. */
  int samples() {
    return forceN.length;
  }

  /**
   * Refuses a force that no cut has.
   *
   * @param forceN samples in N
   * @throws OutsideValidity if one is out of range
   */
  static void withinReach(double[] forceN) {
    for (double force : forceN) {
      OutsideValidity.within("force", force, -1e7, 1e7, "N");
    }
  }
}
