package org.standproud.mechanics.gathering;

import static org.standproud.mechanics.evidence.Vocabulary.EDGE_DEFLECTION;
import static org.standproud.mechanics.evidence.Vocabulary.EDGE_STIFFNESS;
import static org.standproud.mechanics.evidence.Vocabulary.LOW_IMMERSION;
import static org.standproud.mechanics.evidence.Vocabulary.NATURAL_FREQUENCY;
import static org.standproud.mechanics.evidence.Vocabulary.STABILITY_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.TUNING;
import static org.standproud.mechanics.evidence.Vocabulary.VIBRATION_AMPLITUDE;

import java.util.List;
import org.standproud.mechanics.evidence.Assumption;
import org.standproud.mechanics.engagement.EdgeInCut;
import org.standproud.mechanics.force.BandEnd;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.gathering.FactSheet.Basis;
import org.standproud.mechanics.plate.PlateInput;
import org.standproud.mechanics.plate.PlatePoint;
import org.standproud.mechanics.plate.PlateResponse;
import org.standproud.mechanics.vibration.ForcedInput;
import org.standproud.mechanics.vibration.ForcedResponse;
import org.standproud.mechanics.vibration.Stability;
import org.standproud.mechanics.vibration.StabilityInput;
import org.standproud.setup.Band;
import org.standproud.setup.Material;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;

/** How the standing plate gives, rings and chatters. */
final class PlateFacts {

  private static final Assumption DAMPING =
      new Assumption(
          "stock.damping",
          "the stock in its vise damps by 0.01 to 0.05 of critical",
          "common practice, no source");

  private static final Basis PLATE =
      Basis.on("stock", "hold.gripDepth", "hold.vise", "hold.packing");

  private static final int SAMPLES_A_TURN = 360;

  private PlateFacts() {}

  /**
   * The standing plate on its jaws, loaded at the end of its top edge, where it gives most.
   *
   * @param wallM thickness that still stands, in m
   * @param rootTranslationNPerM2 stiffness of the jaws against shift in N/m per metre of jaw
   * @param rootRotationNPerRad stiffness of the jaws against tilt in N m/rad per metre of jaw
   */
  static PlateResponse response(
      Setup setup, double wallM, Band rootTranslationNPerM2, Band rootRotationNPerRad) {
    Stock stock = setup.stock();
    Material material = stock.material();
    return PlateResponse.of(
        new PlateInput(
            setup.stickOutM(),
            stock.lengthM(),
            wallM,
            material.youngsModulusPa(),
            material.poissonsRatio(),
            material.densityKgPerM3(),
            rootTranslationNPerM2,
            rootRotationNPerRad,
            Math.min(stock.lengthM(), setup.hold().vise().jawWidthM()),
            new PlatePoint(stock.lengthM() / 2, setup.stickOutM())));
  }

  static Basis basis(PassForces forces, List<Assumption> ofTheRoot) {
    return ForceFacts.basis(forces).and(PLATE).assuming(ofTheRoot);
  }

  static void stateStatics(
      PlateResponse plate, PassForces forces, List<Assumption> ofTheRoot, FactSheet sheet) {
    Basis basis = basis(forces, ofTheRoot);
    Band pushN = forces.path().y().greatestSizeN();
    sheet.number(EDGE_DEFLECTION, plate.deflectionAtCornerM(pushN), basis);
    sheet.number(
        EDGE_STIFFNESS,
        plate.flexibilityAtCornerMPerN().map(c -> 1 / c),
        PLATE.assuming(ofTheRoot));
    sheet.number(
        NATURAL_FREQUENCY, plate.frequenciesHz().get(0), PLATE.assuming(ofTheRoot));
  }

  static void stateSwing(
      PlateResponse plate,
      PassForces forces,
      List<Assumption> ofTheRoot,
      Setup setup,
      FactSheet sheet) {
    Basis basis =
        basis(forces, ofTheRoot)
            .and(Basis.on("cut.spindleSpeed"))
            .assuming(List.of(DAMPING));
    ForcedResponse likely = swing(plate, forces, setup, false);
    ForcedResponse heaviest = swing(plate, forces, setup, true);
    sheet.number(TUNING, likely.nearestRatio(), basis);
    sheet.number(
        VIBRATION_AMPLITUDE,
        Band.spanning(
            likely.amplitudeM().likely(),
            likely.amplitudeM().low(),
            likely.amplitudeM().high(),
            heaviest.amplitudeM().high()),
        basis);
  }

  private static ForcedResponse swing(
      PlateResponse plate, PassForces forces, Setup setup, boolean heaviest) {
    double[] acrossN =
        (heaviest
                ? forces.heaviestRevolution(SAMPLES_A_TURN)
                : forces.likelyRevolution(SAMPLES_A_TURN))
            .stream().mapToDouble(sample -> sample.force().yN()).toArray();
    return ForcedResponse.of(
        new ForcedInput(
            acrossN,
            setup.cut().spindleSpeedRevPerS(),
            setup.cutter().teeth(),
            plate.modesAtCorner(),
            plate.flexibilityAtCornerMPerN(),
            StabilityInput.USUAL_DAMPING));
  }

  static void stateStability(
      PlateResponse plate,
      PassForces forces,
      List<Assumption> ofTheRoot,
      Setup setup,
      FactSheet sheet) {
    Stability stability =
        Stability.of(
            new StabilityInput(
                plate.modesAtCorner(),
                StabilityInput.USUAL_DAMPING,
                List.of(),
                List.of(),
                tangentialPa(forces, setup),
                radialRatio(setup),
                setup.cutter().teeth(),
                forces.steadyArc().entryRad(),
                forces.steadyArc().exitRad(),
                setup.cutter().diameterM(),
                setup.cut().spindleSpeedRevPerS()));
    Basis basis =
        basis(forces, ofTheRoot)
            .and(Basis.on("cut.spindleSpeed"))
            .assuming(List.of(DAMPING));
    sheet.margin(
        STABILITY_MARGIN,
        stability.depthAtSpeedM().times(1 / setup.cut().axialDepthM()),
        basis);
    sheet.yesNo(
        LOW_IMMERSION,
        stability.cautions().stream().anyMatch(c -> c.doubt() == Stability.Doubt.SHORT_ARC),
        ForceFacts.basis(forces));
  }

  /** Mean tangential force over the mean chip section, z a_p f_z a_e / (2 pi R), in Pa. */
  private static Band tangentialPa(PassForces forces, Setup setup) {
    double sectionM2 =
        setup.cutter().teeth()
            * setup.cut().axialDepthM()
            * setup.cut().feedPerToothM().likely()
            * forces.steadyArc().depthInRadii()
            / (2 * Math.PI);
    return forces.steady().meanTangentialN().times(1 / sectionM2);
  }

  /** Likely radial over tangential force: the thrust normal to the edge, seen in the plan. */
  private static double radialRatio(Setup setup) {
    EdgeInCut edge =
        EdgeInCut.of(
            setup.cut().axialDepthM(),
            setup.cutter().enteringAngleRad(),
            setup.cutter().cornerRadiusM());
    return ForceInput.from(setup).model().split(BandEnd.LIKELY).normal() * edge.sine();
  }
}
