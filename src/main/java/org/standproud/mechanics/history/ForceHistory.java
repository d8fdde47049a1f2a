package org.standproud.mechanics.history;

import java.util.List;
import java.util.Optional;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.drive.HandFeed;
import org.standproud.mechanics.engagement.PassStretch;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.force.PathForces;
import org.standproud.mechanics.force.PathStation;
import org.standproud.setup.Setup;

/**
 * The force on the work of a set-up as curves: over one revolution where it is hardest, along the
 * whole pass, and while the cut fills. Forces in N in the vise frame (x along the jaws, y toward
 * the fixed jaw, z up), angles in rad, places in m. The numbers are those of {@link PassForces}
 * with more places along the pass; a hand on the wheel feeds as {@link HandFeed} says.
 *
 * @param likely one revolution at the worst place at the likely inputs
 * @param heaviest the same at the heaviest inputs
 * @param path along the pass, lead-in to run-out
 * @param filling from the first touch until the whole arc is in the stock
 * @param assumptions what was taken for inputs that are not known
 */
public record ForceHistory(
    RevolutionCurve likely,
    RevolutionCurve heaviest,
    PathCurve path,
    FillingCurve filling,
    List<Assumption> assumptions) {

  /** Steps of a revolution: one a degree. */
  private static final int STEPS_A_TURN = 360;

  /** Less than this share over another peak is the rounding of the places. */
  private static final double HARDER = 1.001;

  /** Copies the list. */
  public ForceHistory {
    assumptions = List.copyOf(assumptions);
  }

  /**
   * The curves of a set-up.
   *
   * @param setup a checked set-up
   * @return empty if the cutter passes beside the stock
   * @throws org.standproud.mechanics.OutsideValidity if an input is outside the range of the
   *     formulas
   */
  public static Optional<ForceHistory> of(Setup setup) {
    return PassForces.toDraw(ForceInput.from(HandFeed.asTheTeethSeeIt(setup)))
        .map(ForceHistory::of);
  }

  private static ForceHistory of(PassForces forces) {
    PathStation worst = worst(forces.path());
    return new ForceHistory(
        RevolutionCurve.of(worst, forces.likelyRevolution(worst.arcs(), STEPS_A_TURN)),
        RevolutionCurve.of(worst, forces.heaviestRevolution(worst.arcs(), STEPS_A_TURN)),
        PathCurve.of(forces.path().stations()),
        FillingCurve.of(forces.path().filling()),
        forces.assumptions());
  }

  /** Steady cutting, unless the cutter coming in or going out is harder on the work. */
  private static PathStation worst(PathForces path) {
    PathStation worst =
        path.stations().stream()
            .filter(station -> station.stretch() == PassStretch.STEADY)
            .findFirst()
            .orElse(path.stations().get(0));
    for (PathStation station : path.stations()) {
      if (greatestN(station) > HARDER * greatestN(worst)) {
        worst = station;
      }
    }
    return worst;
  }

  private static double greatestN(PathStation station) {
    return station.forces().greatestInPlaneN().high();
  }
}
