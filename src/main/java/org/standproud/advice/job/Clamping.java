package org.standproud.advice.job;

import org.jspecify.annotations.Nullable;
import org.standproud.setup.Cutter;
import org.standproud.setup.HandleEffort;
import org.standproud.setup.SparePacking;
import org.standproud.setup.Vise;

/**
 * The choices that are free in one clamping.
 *
 * @param holding how the plate lies or stands
 * @param vise the vise
 * @param gripM height of stock inside the jaws in m
 * @param cutter the cutter
 * @param packing the packing on the movable jaw; null for none
 * @param effort the pull on the handle
 */
record Clamping(
    Holding holding,
    Vise vise,
    double gripM,
    Cutter cutter,
    @Nullable SparePacking packing,
    HandleEffort effort) {

  Clamping with(Cutter other) {
    return new Clamping(holding, vise, gripM, other, packing, effort);
  }

  Clamping with(@Nullable SparePacking other) {
    return new Clamping(holding, vise, gripM, cutter, other, effort);
  }

  Clamping with(HandleEffort other) {
    return new Clamping(holding, vise, gripM, cutter, packing, other);
  }

  Clamping with(double otherGripM) {
    return new Clamping(holding, vise, otherGripM, cutter, packing, effort);
  }

  /** Whether the stock sits on the bed of the vise. */
  boolean onBed() {
    return gripM >= vise.jawHeightM() - 1e-9;
  }
}
