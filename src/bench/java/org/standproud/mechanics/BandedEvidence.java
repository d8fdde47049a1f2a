package org.standproud.mechanics;

import java.util.ArrayList;
import java.util.List;
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
   * @return what each stage made, so that none is left out
   */
  static List<Object> of(Setup meant, RememberedPlates plates) {
    Setup setup = HandFeed.asTheTeethSeeIt(meant);
    ForceInput input = ForceInput.from(setup);
    List<Object> all = new ArrayList<>();
    all.add(Reach.of(setup));
    if (Engagement.of(setup.stock(), setup.cutter(), setup.cut())
        instanceof Engagement.Cutting cutting) {
      PassForces forces = PassForces.of(input).orElseThrow();
      StandingCut cut = StandingCut.of(setup, cutting, forces);
      all.add(cut);
      vibration(setup, cut, forces, plates.of(cut.plate()), all);
      all.add(PassDirections.of(input, forces));
      cutterAndMachine(setup, forces, all);
    }
    return all;
  }

  private static void vibration(
      Setup setup, StandingCut cut, PassForces forces, PlateResponse plate, List<Object> all) {
    double[] acrossN =
        forces.likelyRevolution(360).stream().mapToDouble(s -> s.force().yN()).toArray();
    all.add(
        ForcedResponse.of(
            new ForcedInput(
                acrossN,
                setup.cut().spindleSpeedRevPerS(),
                setup.cutter().teeth(),
                plate.modesAtCorner(),
                plate.flexibilityAtCornerMPerN(),
                StabilityInput.USUAL_DAMPING)));
    all.add(Stability.of(cut.chatter(plate)));
  }

  private static void cutterAndMachine(Setup setup, PassForces forces, List<Object> all) {
    Band feedM = setup.cut().feedPerToothM();
    AxisForce along = forces.path().x();
    all.add(
        CutterStanding.of(
            setup.cutter(),
            setup.cut(),
            setup.stock().material(),
            setup.machine().spindleStiffnessNPerM(),
            forces.path().greatestInPlaneN(),
            feedM,
            feedM));
    all.add(
        SpindleLoad.of(setup.machine(), setup.cut().spindleSpeedRevPerS(), forces.meanPowerW()));
    all.add(
        TableLurch.of(
            setup.machine(),
            setup.cut(),
            along.leastN(),
            along.meanN(),
            along.greatestN(),
            forces.path().z().greatestN().times(-1)));
    all.add(SurfaceFinish.of(setup, feedM, null));
  }
}
