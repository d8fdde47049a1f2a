package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.CHIP_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.CUTTER_DEFLECTION;
import static org.standproud.mechanics.evidence.Vocabulary.CUTTER_SLENDERNESS;
import static org.standproud.mechanics.evidence.Vocabulary.CUTTER_STRENGTH_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.FEED_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.POWER_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.SPEED_AVAILABLE;
import static org.standproud.mechanics.evidence.Vocabulary.SPEED_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.TORQUE_MARGIN;

import org.standproud.mechanics.cutter.CutterStanding;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.spindle.SpindleLoad;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/** How the cutter stands the pass, and whether the spindle drives it. */
final class CutterFacts {

  private static final double LEAST_TORQUE_NM = 1e-6;

  private CutterFacts() {}

  static void stateCutter(PassForces forces, Band greatestChipM, Setup setup, FactSheet sheet) {
    CutterStanding standing =
        CutterStanding.of(
            setup.cutter(),
            setup.cut(),
            setup.stock().material(),
            setup.machine().spindleStiffnessNPerM(),
            forces.path().greatestInPlaneN(),
            setup.cut().feedPerToothM(),
            greatestChipM);
    Basis basis =
        ForceFacts.basis(forces).and(Basis.on("machine")).assuming(standing.assumptions());
    sheet.number(CUTTER_DEFLECTION, standing.deflectionM(), basis);
    sheet.number(CUTTER_STRENGTH_MARGIN, standing.strengthOverStress(), basis);
    sheet.number(CUTTER_SLENDERNESS, standing.overhangRatio(), Basis.on("cutter"));
    Basis published = Basis.on("stock.material", "cutter", "cut.spindleSpeed");
    sheet.number(SPEED_RATIO, standing.speed().overGreatest(), published);
    sheet.number(
        FEED_RATIO, standing.feed().overGreatest(), published.and(Basis.on("cut.feedPerTooth")));
    sheet.number(CHIP_MARGIN, standing.chipOverLeast(), basis);
  }

  static void stateSpindle(PassForces forces, Setup setup, FactSheet sheet) {
    SpindleLoad load =
        SpindleLoad.of(setup.machine(), setup.cut().spindleSpeedRevPerS(), forces.meanPowerW());
    Basis basis = ForceFacts.basis(forces).and(Basis.on("machine", "cut.spindleSpeed"));
    sheet.yesNo(SPEED_AVAILABLE, load.speedInRange(), Basis.on("machine", "cut.spindleSpeed"));
    sheet.number(POWER_MARGIN, load.askedOverAvailable().map(r -> 1 / Math.max(r, 1e-3)), basis);
    Band asked = forces.greatestTorqueNm().map(t -> Math.max(t, LEAST_TORQUE_NM));
    sheet.number(TORQUE_MARGIN, load.availableTorqueNm().over(asked), basis);
  }
}
