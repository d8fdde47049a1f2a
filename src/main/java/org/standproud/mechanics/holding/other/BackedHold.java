package org.standproud.mechanics.holding.other;

import static org.standproud.mechanics.OutsideValidity.within;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.jaw.Bearing;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.setup.Band;

/**
 * Stock clamped with its broad side against an upright backing, which stands on the positive Y
 * side: an angle plate or the side of a vise.
 *
 * <p>Heights are measured from the top of the backing: the height of the load above it is the
 * height above the jaw of the load. Own model, from statics; friction is counted at the backing
 * only, no stop.
 *
 * @param backing what it is clamped against
 * @param clamps number of clamps, 1 to 20
 * @param forceEachN force of each clamp on the work in N
 * @param friction friction between stock and backing, 0.02 to 1
 * @param clampDepthM depth of the clamps below the top of the backing in m
 * @param backedHeightM height of stock that is backed in m
 * @param lengthM length of stock that is backed, between the outer clamps, in m
 * @param thicknessM thickness of the stock in m
 * @param seated whether the underside sits on the table or on parallels
 */
public record BackedHold(
    Backing backing,
    int clamps,
    Band forceEachN,
    Band friction,
    double clampDepthM,
    double backedHeightM,
    double lengthM,
    double thicknessM,
    boolean seated) {

  /** What stock is clamped against. */
  public enum Backing {
    /** An angle plate: its face is true, so the stock bears on its whole backed height. */
    ANGLE_PLATE,
    /** The side of a vise is no reference face: surely only its middle third bears. */
    VISE_SIDE;

    private Bearing surely(double heightM) {
      return this == ANGLE_PLATE ? Bearing.wholeFace(heightM) : Bearing.withoutGap(heightM);
    }
  }

  /**
   * Refuses a hold out of range.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public BackedHold {
    within("number of clamps", clamps, 1, 20, "");
    within("force of a clamp", forceEachN.low(), 1, 1e6 / clamps, "N");
    within("friction at the backing", friction.low(), 0.02, 1, "");
    within("friction at the backing", friction.high(), 0.02, 1, "");
    within("backed height", backedHeightM, 1e-3, 0.5, "m");
    within("depth of the clamps", clampDepthM, 0, backedHeightM, "m");
    within("backed length", lengthM, 1e-3, 2, "m");
  }

  /**
   * Margins of the hold.
   *
   * @param load force of the cut on the work
   */
  public ClampedMargins under(HoldingLoad load) {
    return new BackedStock(
            forceEachN.times(clamps),
            friction,
            clampDepthM,
            backedHeightM,
            backing.surely(backedHeightM),
            Bearing.wholeFace(backedHeightM),
            lengthM,
            thicknessM,
            seated)
        .under(load);
  }
}
