package org.standproud.mechanics.plate;

import org.standproud.mechanics.OutsideValidity;

/** What the jaws do to the foot of the plate at the jaw top. */
public sealed interface PlateRoot {

  /** Neither shift nor turn along the whole foot: the stiff bound no vise reaches. */
  record Rigid() implements PlateRoot {}

  /**
   * Springs along the foot, spread evenly over the middle part that the jaws cover.
   *
   * @param translationNPerM2 force across the stock per metre of shift and per metre of jaw, N/m
   *     per m, greater than zero
   * @param rotationNPerRad moment about the jaw line per radian and per metre of jaw, N.m/rad per
   *     m, greater than zero
   * @param supportedFraction length of the jaws over length of the stock, 1 where the jaws are as
   *     long or longer; the stock is taken as centred in the jaws; 0.1 to 1
   */
  record Elastic(double translationNPerM2, double rotationNPerRad, double supportedFraction)
      implements PlateRoot {

    /**
     * Refuses springs that do not hold.
     *
     * @throws OutsideValidity if a stiffness is not positive and finite, or the fraction is not in
     *     0.1 to 1
     */
    public Elastic {
      OutsideValidity.within("root translation", translationNPerM2, 1e-3, 1e18, "N/m per m");
      OutsideValidity.within("root rotation", rotationNPerRad, 1e-3, 1e18, "N.m/rad per m");
      OutsideValidity.within("supported fraction", supportedFraction, 0.1, 1, "");
    }
  }
}
