package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.EDGE_DEFLECTION;
import static org.standproud.mechanics.evidence.Vocabulary.EDGE_STIFFNESS;
import static org.standproud.mechanics.evidence.Vocabulary.FASTER_QUIET_SPEED;
import static org.standproud.mechanics.evidence.Vocabulary.LOW_IMMERSION;
import static org.standproud.mechanics.evidence.Vocabulary.NATURAL_FREQUENCY;
import static org.standproud.mechanics.evidence.Vocabulary.SLOWER_QUIET_SPEED;
import static org.standproud.mechanics.evidence.Vocabulary.SOFTER_MEMBER;
import static org.standproud.mechanics.evidence.Vocabulary.STABILITY_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.TUNING;
import static org.standproud.mechanics.evidence.Vocabulary.VIBRATION_AMPLITUDE;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.cutter.SpindleCompliance;
import org.standproud.mechanics.cutter.WornLand;
import org.standproud.mechanics.evidence.CutMember;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.holding.HoldAssumptions;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.vibration.CoupledDepth;
import org.standproud.mechanics.vibration.QuietSpeeds;
import org.standproud.mechanics.vibration.Stability;
import org.standproud.setup.Setup;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.request.MachineFields;
import org.standproud.setup.request.RequestFields;

/** How the standing plate gives and rings, and how plate and cutter swing and chatter. */
final class PlateFacts {

  private static final Assumption DAMPING =
      new Assumption(
          HoldFields.MEASURED_DAMPING,
          "the stock in its vise damps by 0.01 to 0.05 of critical",
          "common practice, no source",
          "the damping of the stock in its vise, by a tap and how its note dies away");

  private static final List<Assumption> TOOL =
      List.of(
          SpindleCompliance.TILT,
          new Assumption(
              MachineFields.SPINDLE_STIFFNESS,
              "the spindle rings at 250 to 1000 Hz by itself and the taper turns by one rad for 0.3"
                  + " to 3 MN.m",
              "taper: Erturk, Ozguven and Budak, IJMTM 46 (2006) 1901, from memory; spindle: common"
                  + " practice, no source"),
          new Assumption(
              MachineFields.SPINDLE_STIFFNESS,
              "cutter and spindle damp by 0.013 to 0.12 of critical",
              "thirteen measured modes: Hajdu and others, IJMTM 149 (2020) 103516; Altintas,"
                  + " Manufacturing Automation, 2012, p. 156"));

  private static final Basis PLATE =
      Basis.on(
          RequestFields.STOCK,
          HoldFields.GRIP_DEPTH,
          HoldFields.VISE,
          HoldFields.PACKING,
          HoldFields.BACKING,
          HoldFields.MEASURED_NOTE,
          HoldFields.MEASURED_STIFFNESS);

  /** Tooth-passing harmonics that carry enough force to shake a plate on their own. */
  private static final double LOW_HARMONICS = 4;

  private final DrawnCut cut;
  private final Setup setup;
  private final DrawnPlate plate;
  private final Basis basis;
  private final Basis standing;

  PlateFacts(DrawnPlate plate) {
    this.plate = plate;
    this.cut = plate.cut();
    this.setup = cut.setup();
    this.standing = PLATE.assuming(HoldAssumptions.of(setup.hold(), setup.stock()));
    this.basis = ForceFacts.basis(cut).and(standing);
  }

  void state(FactSheet sheet) {
    int n = cut.draws();
    double revPerS = setup.cut().spindleSpeedRevPerS();
    sheet.number(EDGE_DEFLECTION, n, plate::deflectionM, basis);
    sheet.number(EDGE_STIFFNESS, n, draw -> 1 / plate.flexibilityMPerN(draw), standing);
    sheet.number(NATURAL_FREQUENCY, n, plate::firstHz, standing);
    Basis ringing =
        basis
            .and(Basis.on(CutFields.SPINDLE))
            .and(Basis.on(HoldFields.MEASURED_DAMPING))
            .assuming(
                setup.hold().measured().dampingRatio() == null ? List.of(DAMPING) : List.of());
    Basis swinging =
        ringing.and(Basis.on(RequestFields.MACHINE, RequestFields.CUTTER)).assuming(TOOL);
    sheet.number(TUNING, n, this::tuning, ringing);
    sheet.number(SLOWER_QUIET_SPEED, n, draw -> quiet(draw, QuietSpeeds::slowerRevPerS), ringing);
    sheet.number(FASTER_QUIET_SPEED, n, draw -> quiet(draw, QuietSpeeds::fasterRevPerS), ringing);
    sheet.number(VIBRATION_AMPLITUDE, n, plate::swingM, swinging);
    double[] chatterM = new double[n];
    int holding = 0;
    int softPlates = 0;
    for (int draw = 0; draw < n; draw++) {
      CoupledDepth.Limit limit = plate.chatter(draw, revPerS);
      chatterM[draw] = limit.depthM();
      holding += Double.isNaN(limit.depthM()) ? 0 : 1;
      softPlates += limit.stockShare() >= 0.5 ? 1 : 0;
    }
    Basis chattering = swinging.assuming(List.of(WornLand.ASSUMPTION));
    sheet.number(
        STABILITY_MARGIN, n, draw -> chatterM[draw] / setup.cut().axialDepthM(), chattering);
    if (holding > 0) {
      sheet.word(
          SOFTER_MEMBER,
          2 * softPlates >= holding ? CutMember.PLATE : CutMember.CUTTER,
          chattering);
    } else {
      sheet.letsGo(SOFTER_MEMBER, chattering);
    }
    sheet.yesNo(
        LOW_IMMERSION,
        Stability.isShort(cut.forces().steadyArc().spanRad()),
        ForceFacts.basis(cut));
  }

  /** A quiet speed beside the set one; NaN in a draw without a natural frequency. */
  private double quiet(int draw, ToDoubleFunction<QuietSpeeds> speed) {
    double naturalHz = plate.firstHz(draw);
    return Double.isNaN(naturalHz)
        ? Double.NaN
        : speed.applyAsDouble(
            QuietSpeeds.around(
                naturalHz, setup.cutter().teeth(), setup.cut().spindleSpeedRevPerS()));
  }

  /** The low tooth-passing harmonic nearest to the first natural frequency, over that. */
  private double tuning(int draw) {
    double toothHz = setup.cut().spindleSpeedRevPerS() * setup.cutter().teeth();
    double first = plate.firstHz(draw);
    double order = Math.max(1, Math.min(LOW_HARMONICS, Math.rint(first / toothHz)));
    return order * toothHz / first;
  }

  /** What a deflection of the plate under the cut stands on. */
  Basis basis() {
    return basis;
  }
}
