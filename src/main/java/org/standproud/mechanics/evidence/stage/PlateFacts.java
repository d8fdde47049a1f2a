package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.EDGE_DEFLECTION;
import static org.standproud.mechanics.evidence.Vocabulary.EDGE_STIFFNESS;
import static org.standproud.mechanics.evidence.Vocabulary.FASTER_QUIET_SPEED;
import static org.standproud.mechanics.evidence.Vocabulary.LOW_IMMERSION;
import static org.standproud.mechanics.evidence.Vocabulary.NATURAL_FREQUENCY;
import static org.standproud.mechanics.evidence.Vocabulary.SLOWER_QUIET_SPEED;
import static org.standproud.mechanics.evidence.Vocabulary.STABILITY_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.TUNING;
import static org.standproud.mechanics.evidence.Vocabulary.VIBRATION_AMPLITUDE;

import java.util.List;
import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.evidence.Assumption;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.force.ForceSample;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.plate.PlateResponse;
import org.standproud.mechanics.vibration.ForcedInput;
import org.standproud.mechanics.vibration.ForcedResponse;
import org.standproud.mechanics.vibration.QuietSpeeds;
import org.standproud.mechanics.vibration.Stability;
import org.standproud.mechanics.vibration.StabilityInput;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

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

  /** Tooth-passing harmonics that carry enough force to shake a plate on their own. */
  private static final double LOW_HARMONICS = 4;

  private final PlateResponse plate;
  private final StandingCut cut;
  private final PassForces forces;
  private final Setup setup;
  private final Basis standing;

  PlateFacts(StandingCut cut, PlateResponse plate) {
    this.plate = plate;
    this.cut = cut;
    this.forces = cut.forces();
    this.setup = cut.setup();
    this.standing = PLATE.assuming(cut.holding().assumptions());
  }

  /** What a deflection of the plate under the cut stands on. */
  Basis basis() {
    return ForceFacts.basis(forces).and(standing);
  }

  void stateStatics(FactSheet sheet) {
    Basis basis = basis();
    Band pushN = forces.path().y().greatestSizeN();
    sheet.number(EDGE_DEFLECTION, plate.deflectionAtCornerM(pushN), basis);
    sheet.number(EDGE_STIFFNESS, plate.flexibilityAtCornerMPerN().map(c -> 1 / c), standing);
    sheet.number(NATURAL_FREQUENCY, plate.frequenciesHz().get(0), standing);
  }

  void stateSwing(FactSheet sheet) {
    Basis basis = basis().and(Basis.on("cut.spindleSpeed")).assuming(List.of(DAMPING));
    List<ForcedResponse> swings =
        ForcedResponse.ofBoth(
            swing(acrossN(forces.likelyRevolution(SAMPLES_A_TURN))),
            acrossN(forces.heaviestRevolution(SAMPLES_A_TURN)));
    Band likely = swings.get(0).amplitudeM();
    Band heaviest = swings.get(1).amplitudeM();
    sheet.number(TUNING, tuning(), basis);
    QuietSpeeds quiet =
        QuietSpeeds.around(
            plate.frequenciesHz().get(0).likely(),
            setup.cutter().teeth(),
            setup.cut().spindleSpeedRevPerS());
    sheet.number(SLOWER_QUIET_SPEED, quiet.slowerRevPerS(), standing);
    sheet.number(FASTER_QUIET_SPEED, quiet.fasterRevPerS(), standing);
    sheet.number(
        VIBRATION_AMPLITUDE,
        Band.spanning(likely.likely(), likely.low(), likely.high(), heaviest.high()),
        basis);
  }

  /**
   * The low tooth-passing harmonic nearest to the likely first natural frequency, over the band of
   * that frequency. Higher harmonics always lie near and carry little force; the vibration
   * amplitude counts them all.
   */
  private Band tuning() {
    double toothHz = setup.cut().spindleSpeedRevPerS() * setup.cutter().teeth();
    Band natural = plate.frequenciesHz().get(0);
    double order = Math.max(1, Math.min(LOW_HARMONICS, Math.rint(natural.likely() / toothHz)));
    return natural.map(f -> order * toothHz / f);
  }

  private static double[] acrossN(List<ForceSample> turn) {
    return turn.stream().mapToDouble(sample -> sample.force().yN()).toArray();
  }

  private ForcedInput swing(double[] acrossN) {
    return new ForcedInput(
        acrossN,
        setup.cut().spindleSpeedRevPerS(),
        setup.cutter().teeth(),
        plate.modesAtCorner(),
        plate.flexibilityAtCornerMPerN(),
        StabilityInput.USUAL_DAMPING);
  }

  void stateStability(FactSheet sheet) {
    Stability stability = Stability.of(cut.chatter(plate));
    Basis basis = basis().and(Basis.on("cut.spindleSpeed")).assuming(List.of(DAMPING));
    sheet.number(
        STABILITY_MARGIN, stability.depthAtSpeedM().times(1 / setup.cut().axialDepthM()), basis);
    sheet.yesNo(
        LOW_IMMERSION,
        stability.cautions().stream().anyMatch(c -> c.doubt() == Stability.Doubt.SHORT_ARC),
        ForceFacts.basis(forces));
  }
}
