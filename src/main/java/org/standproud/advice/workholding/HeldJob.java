package org.standproud.advice.workholding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.holding.WeakestWay;
import org.standproud.mechanics.holding.other.ClampedMargins;
import org.standproud.mechanics.time.PassPath;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.Seat;
import org.standproud.setup.Setup;
import org.standproud.setup.Stop;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.request.RequestFields;

/**
 * The job in another hold. For forces, reach and cutter, a jaw as high as the backing is equivalent
 * to the backing, so the mechanics of the vise are computed with such a jaw. Their margins are
 * replaced, and the stops at both ends are not counted; deflection and vibration are left open,
 * because the stiffness of straps and backing is not known.
 *
 * @param setup the set-up for the mechanics
 * @param cut the computed evidence
 * @param straps the straps
 * @param freeM height above the backing in m
 * @param backedM height of the backing in m
 * @param clearOfStrapsM distance from the cut down to the straps in m
 */
record HeldJob(
    Setup setup, Evidence cut, Straps straps, double freeM, double backedM, double clearOfStrapsM) {

  private static final String MEASURE =
      "how the stock springs and rings in that hold: tug at it with an indicator on the edge, tap"
          + " it and listen";

  private static final List<Fact> SPRING =
      List.of(
          Vocabulary.EDGE_STIFFNESS,
          Vocabulary.TURNING_STIFFNESS_FIXED,
          Vocabulary.TURNING_STIFFNESS_MOVABLE,
          Vocabulary.NATURAL_FREQUENCY,
          Vocabulary.TUNING,
          Vocabulary.SLOWER_QUIET_SPEED,
          Vocabulary.FASTER_QUIET_SPEED,
          Vocabulary.VIBRATION_AMPLITUDE,
          Vocabulary.STABILITY_MARGIN,
          Vocabulary.SOFTER_MEMBER,
          Vocabulary.SIZE_ERROR);

  private static final Assumption SHORT_AND_BACKED =
      new Assumption(
          RequestFields.HOLD,
          "what stands free by no more than its thickness is taken to spring by nothing",
          "own assumption, no source");

  private static final Assumption ANYWHERE =
      new Assumption(
          RequestFields.MACHINE,
          "the hold is bolted down where the cut lies in the middle of the travel across",
          "common practice, no source");

  /**
   * A job in another hold.
   *
   * @param job the job; its vise is not used
   * @param underM height of the underside above the table in m
   * @param backedM height of the backing in m
   * @param clearOfStrapsM distance from the cut down to the straps in m
   */
  static HeldJob of(
      Setup job, Straps straps, double underM, double backedM, double clearOfStrapsM) {
    Vise v = job.hold().vise();
    Vise asHigh = ViseBuilder.builder(v).jawHeightM(backedM).bedHeightM(underM).build();
    Hold hold =
        Hold.in(asHigh, backedM)
            .clamping(straps.forceN(), null, straps.friction())
            .seat(Seat.PARALLELS)
            .stop(Stop.BOTH)
            .held();
    Setup held = SetupEditor.of(job).hold(hold).done();
    return new HeldJob(
        held,
        EvidenceGathering.of(held),
        straps,
        job.stock().heightM() - backedM,
        backedM,
        clearOfStrapsM);
  }

  /** The facts, with the margins of the hold in them. */
  Evidence with(ClampedMargins margins) {
    List<EvidenceValue> values = new ArrayList<>();
    Map.of(
            Vocabulary.SLIP_MARGIN, margins.slipMargin(),
            Vocabulary.LIFT_MARGIN, margins.liftMargin(),
            Vocabulary.TIP_MARGIN_FIXED, margins.tipMarginTowardSupport(),
            Vocabulary.TIP_MARGIN_MOVABLE, margins.tipMarginAway(),
            Vocabulary.HOLDING_MARGIN, margins.combinedMargin(),
            Vocabulary.CLAMPING_FORCE, straps.forceN(),
            // One face holds: friction of the straps' own faces is not counted.
            Vocabulary.JAW_FRICTION, straps.friction().times(0.5),
            Vocabulary.STICK_OUT, Band.exactly(freeM),
            Vocabulary.GRIP_DEPTH, Band.exactly(backedM),
            Vocabulary.JAW_CLEARANCE, Band.exactly(clearOfStrapsM))
        .forEach((fact, band) -> values.add(value(fact, new Value.Quantity(band), List.of())));
    values.add(value(Vocabulary.LEAST_HOLD_MARGIN, new Value.Quantity(margins.hold()), List.of()));
    values.add(
        value(
            Vocabulary.WEAKEST_WAY,
            new Value.Text(
                WeakestWay.of(
                        margins.slipMargin().low(),
                        margins.liftMargin().low(),
                        margins.tipMarginTowardSupport().low(),
                        margins.tipMarginAway().low())
                    .words()),
            List.of()));
    for (Fact fact : SPRING) {
      values.add(value(fact, new Value.Missing(MEASURE), List.of()));
    }
    values.add(
        value(
            Vocabulary.TRAVEL_CLEARANCE,
            new Value.Quantity(Band.exactly(travelLeftM())),
            List.of(ANYWHERE)));
    values.add(
        isShort()
            ? value(
                Vocabulary.EDGE_DEFLECTION,
                new Value.Quantity(Band.exactly(0)),
                List.of(SHORT_AND_BACKED))
            : value(Vocabulary.EDGE_DEFLECTION, new Value.Missing(MEASURE), List.of()));
    return cut.with(values);
  }

  private double travelLeftM() {
    return Math.min(
        setup.machine().travelXM() - PassPath.of(setup).lengthM(), setup.machine().travelYM() / 2);
  }

  private boolean isShort() {
    return freeM <= setup.stock().thicknessM();
  }

  /** The assumption about its deflection, or that it was not calculated. */
  String spring() {
    return isShort()
        ? "assumed: " + SHORT_AND_BACKED.statement() + " (" + SHORT_AND_BACKED.source() + ")"
        : "not calculated: " + MEASURE;
  }

  private static EvidenceValue value(Fact fact, Value value, List<Assumption> assumed) {
    return new EvidenceValue(fact, value, List.of(FieldPointer.to(RequestFields.HOLD)), assumed);
  }
}
