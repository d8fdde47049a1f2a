package org.standproud.mechanics;

import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.cutter.CutterStanding;
import org.standproud.mechanics.direction.PassDirections;
import org.standproud.mechanics.drive.HandFeed;
import org.standproud.mechanics.drive.TableLurch;
import org.standproud.mechanics.engagement.Engagement;
import org.standproud.mechanics.finish.SurfaceFinish;
import org.standproud.mechanics.force.AxisForce;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.plate.PlateResponse;
import org.standproud.mechanics.plate.RememberedPlates;
import org.standproud.mechanics.reach.Reach;
import org.standproud.mechanics.spindle.SpindleLoad;
import org.standproud.mechanics.vibration.ForcedInput;
import org.standproud.mechanics.vibration.ForcedResponse;
import org.standproud.mechanics.vibration.Stability;
import org.standproud.mechanics.vibration.StabilityInput;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/**
 * What the evidence by bands of version 0.2.0 worked out, stage by stage: the yardstick of the
 * joint evidence, timed in the same run. It filled no sheet of facts, which took a tenth more.
 */
final class BandedEvidence {

  private BandedEvidence() {}

  /**
   * Every stage once.
   *
   * @param meant a checked set-up that cuts and holds within the range of the formulas
   * @param plates where the plates met before are kept
   * @return something of every stage, so that none is left out
   */
  static double of(Setup meant, RememberedPlates plates) {
    Setup setup = HandFeed.asTheTeethSeeIt(meant);
    ForceInput input = ForceInput.from(setup);
    double all = 0;
    if (Engagement.of(setup.stock(), setup.cutter(), setup.cut())
        instanceof Engagement.Cutting cutting) {
      PassForces forces = PassForces.of(input).orElseThrow();
      StandingCut cut = StandingCut.of(setup, cutting, forces);
      PlateResponse plate = plates.of(cut.plate());
      all += cut.holding().contactLengthM() + vibration(setup, cut, forces, plate);
      all += PassDirections.of(input, forces).hashCode() + cutterAndMachine(setup, forces);
    }
    return all + Reach.of(setup).daylightM();
  }

  private static double vibration(
      Setup setup, StandingCut cut, PassForces forces, PlateResponse plate) {
    double[] acrossN =
        forces.likelyRevolution(360).stream().mapToDouble(s -> s.force().yN()).toArray();
    ForcedResponse swing =
        ForcedResponse.of(
            new ForcedInput(
                acrossN,
                setup.cut().spindleSpeedRevPerS(),
                setup.cutter().teeth(),
                plate.modesAtCorner(),
                plate.flexibilityAtCornerMPerN(),
                StabilityInput.USUAL_DAMPING));
    return swing.hashCode() + Stability.of(cut.chatter(plate)).hashCode();
  }

  private static double cutterAndMachine(Setup setup, PassForces forces) {
    Band feedM = setup.cut().feedPerToothM();
    AxisForce along = forces.path().x();
    return CutterStanding.of(
                setup.cutter(),
                setup.cut(),
                setup.stock().material(),
                setup.machine().spindleStiffnessNPerM(),
                forces.path().greatestInPlaneN(),
                feedM,
                feedM)
            .hashCode()
        + SpindleLoad.of(
                setup.machine(), setup.cut().spindleSpeedRevPerS(), forces.meanPowerW())
            .hashCode()
        + TableLurch.of(
                setup.machine(),
                setup.cut(),
                along.leastN(),
                along.meanN(),
                along.greatestN(),
                forces.path().z().greatestN().times(-1))
            .hashCode()
        + SurfaceFinish.of(setup, feedM, null).hashCode();
  }
}
