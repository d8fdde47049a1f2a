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
import org.standproud.mechanics.holding.other.BackedBlock;
import org.standproud.mechanics.holding.other.ClampedMargins;
import org.standproud.mechanics.holding.other.LyingStock;
import org.standproud.mechanics.time.PassPath;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.Seat;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;
import org.standproud.setup.Stop;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.request.RequestFields;

/**
 * The job in another hold. For forces, reach and cutter, a jaw as high as the backing is equivalent
 * to the backing, so the mechanics of the vise are computed with such a jaw: as stiff as the
 * backing, with the straps as a line of packing that presses at their height. Stock that lies flat
 * is computed on the joints under its straps ({@link LyingStock}). The margins are replaced, and
 * the stops at both ends are not counted but on the table.
 *
 * @param setup the set-up for the mechanics
 * @param cut the computed evidence
 * @param straps the straps
 * @param freeM height above the backing in m
 * @param backedM height of the backing in m
 * @param clearOfStrapsM distance from the cut down to the straps in m
 * @param spring what its give and vibration were computed with
 */
record HeldJob(
    Setup setup,
    Evidence cut,
    Straps straps,
    double freeM,
    double backedM,
    double clearOfStrapsM,
    String spring) {

  private static final String MEASURE =
      "how the stock springs and rings in that hold: tug at it with an indicator on the edge, tap"
          + " it and listen";

  private static final List<Fact> SPRING =
      List.of(
          Vocabulary.EDGE_STIFFNESS,
          Vocabulary.NATURAL_FREQUENCY,
          Vocabulary.TUNING,
          Vocabulary.SLOWER_QUIET_SPEED,
          Vocabulary.FASTER_QUIET_SPEED,
          Vocabulary.VIBRATION_AMPLITUDE,
          Vocabulary.STABILITY_MARGIN,
          Vocabulary.SOFTER_MEMBER,
          Vocabulary.SIZE_ERROR);

  /** The noses of the straps press like a line of this thickness. */
  private static final double NOSE_M = 3e-3;

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
   * A job upright against a backing.
   *
   * @param job the job; its vise is not used
   * @param straps the straps
   * @param backingNPerM stiffness of the backing at its top in N/m
   * @param backedM height of the backing in m
   * @param clampM depth of the straps below its top in m
   * @param clearOfStrapsM distance from the cut down to the straps in m
   */
  static HeldJob upright(
      Setup job,
      Straps straps,
      Band backingNPerM,
      double backedM,
      double clampM,
      double clearOfStrapsM) {
    Vise stands =
        ViseBuilder.builder(job.hold().vise())
            .jawHeightM(backedM)
            .bedHeightM(0)
            .fixedJawStiffnessNPerM(backingNPerM)
            .movableJawStiffnessNPerM(straps.stiffnessNPerM())
            .movableJawLiftRad(Band.exactly(0))
            .build();
    double noseM = Math.min(NOSE_M, backedM / 4);
    Packing noses =
        new Packing(
            JawSide.MOVABLE,
            PackingKind.STRIP,
            PackingMaterial.STEEL,
            noseM,
            Math.max(noseM / 2, Math.min(clampM, backedM - noseM / 2)));
    Setup held = with(job, stands, straps, backedM, List.of(noses));
    Stock stock = job.stock();
    double freeM = stock.heightM() - backedM;
    Evidence evidence =
        freeM <= stock.thicknessM()
            ? EvidenceGathering.backed(
                held,
                new BackedBlock(massKg(stock), stock.heightM(), stock.thicknessM(), backedM, freeM))
            : EvidenceGathering.of(held);
    return new HeldJob(
        held,
        evidence,
        straps,
        freeM,
        backedM,
        clearOfStrapsM,
        "a backing of "
            + perMicrometre(backingNPerM)
            + " N/um at its top and straps of "
            + perMicrometre(straps.stiffnessNPerM())
            + " N/um: common practice, no source");
  }

  /**
   * A job flat on packing on the table.
   *
   * @param job the job as it lies; its vise is not used
   * @param straps the straps
   * @param underM height of the underside above the table in m
   * @param clearOfStrapsM distance from the cut down to the straps in m
   */
  static HeldJob flat(Setup job, Straps straps, double underM, double clearOfStrapsM) {
    Stock stock = job.stock();
    Vise table =
        ViseBuilder.builder(job.hold().vise())
            .jawHeightM(stock.heightM())
            .bedHeightM(underM)
            .build();
    Setup held = with(job, table, straps, stock.heightM(), List.of());
    return new HeldJob(
        held,
        EvidenceGathering.lying(
            held, new LyingStock(straps.count(), LyingStock.FOOT_M2, massKg(stock))),
        straps,
        0,
        stock.heightM(),
        clearOfStrapsM,
        "rigid stock on the pressed joints under its straps, each 30 mm square: own model");
  }

  private static double massKg(Stock stock) {
    return stock.material().densityKgPerM3()
        * stock.lengthM()
        * stock.thicknessM()
        * stock.heightM();
  }

  private static Setup with(
      Setup job, Vise vise, Straps straps, double gripM, List<Packing> packing) {
    Hold hold =
        Hold.in(vise, gripM)
            .clamping(straps.forceN(), null, straps.friction())
            .packing(packing)
            .seat(Seat.PARALLELS)
            .stop(Stop.BOTH)
            .held();
    return SetupEditor.of(job).hold(hold).done();
  }

  private static String perMicrometre(Band nPerM) {
    return Math.round(nPerM.low() / 1e6) + " to " + Math.round(nPerM.high() / 1e6);
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
      if (!isComputed(fact)) {
        values.add(value(fact, new Value.Missing(MEASURE), List.of()));
      }
    }
    values.add(
        value(
            Vocabulary.TRAVEL_CLEARANCE,
            new Value.Quantity(Band.exactly(travelLeftM())),
            List.of(ANYWHERE)));
    if (!isComputed(Vocabulary.EDGE_DEFLECTION)) {
      values.add(deflection());
    }
    return cut.with(values);
  }

  /** Whether the mechanics has it: a stock that lets go in every draw has none either. */
  private boolean isComputed(Fact fact) {
    return !(cut.get(fact) instanceof Value.Missing);
  }

  private EvidenceValue deflection() {
    return isShort()
        ? value(
            Vocabulary.EDGE_DEFLECTION,
            new Value.Quantity(Band.exactly(0)),
            List.of(SHORT_AND_BACKED))
        : value(Vocabulary.EDGE_DEFLECTION, new Value.Missing(MEASURE), List.of());
  }

  private double travelLeftM() {
    return Math.min(
        setup.machine().travelXM() - PassPath.of(setup).lengthM(), setup.machine().travelYM() / 2);
  }

  private boolean isShort() {
    return freeM <= setup.stock().thicknessM();
  }

  /** What its give and vibration were computed with, or that they were not. */
  String springs() {
    if (isComputed(Vocabulary.EDGE_DEFLECTION)) {
      return "give and vibration computed with " + spring;
    }
    return isShort()
        ? "assumed: " + SHORT_AND_BACKED.statement() + " (" + SHORT_AND_BACKED.source() + ")"
        : "not calculated: " + MEASURE;
  }

  private static EvidenceValue value(Fact fact, Value value, List<Assumption> assumed) {
    return new EvidenceValue(fact, value, List.of(FieldPointer.to(RequestFields.HOLD)), assumed);
  }
}
