package org.standproud.mechanics.direction;

import java.util.Optional;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.force.PathForces;
import org.standproud.mechanics.force.RevolutionForces;

/**
 * Which ways a pass pushes the stock.
 *
 * @param steady in steady cutting
 * @param pass over the whole pass, lead-in and run-out included
 * @param firstContact at the first touch
 */
public record PassDirections(Pushes steady, Pushes pass, FirstContact firstContact) {

  /**
   * The directions of a pass.
   *
   * @param input the pass
   * @return empty if the cutter passes beside the stock
   * @throws org.standproud.mechanics.OutsideValidity if an input is outside the range of the
   *     formulas
   */
  public static Optional<PassDirections> of(ForceInput input) {
    return PassForces.of(input).map(forces -> of(input, forces));
  }

  /**
   * The directions of a pass whose forces are known.
   *
   * @param input the pass
   * @param forces its forces
   */
  public static PassDirections of(ForceInput input, PassForces forces) {
    RevolutionForces s = forces.steady();
    PathForces p = forces.path();
    return new PassDirections(
        Pushes.of(s.x(), s.y(), s.z(), s.greatestInPlaneN()),
        Pushes.of(p.x(), p.y(), p.z(), p.greatestInPlaneN()),
        FirstContact.of(input, forces));
  }
}
