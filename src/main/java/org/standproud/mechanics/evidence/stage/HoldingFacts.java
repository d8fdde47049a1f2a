package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.BEST_PACKING_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.CLAMPING_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.CLAMP_BOW;
import static org.standproud.mechanics.evidence.Vocabulary.CONTACT_LENGTH;
import static org.standproud.mechanics.evidence.Vocabulary.CONTACT_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.HOLDING_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_FRICTION;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_GAP_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_PRESSURE_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.LIFT_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.MAY_ROCK;
import static org.standproud.mechanics.evidence.Vocabulary.NO_GAP_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.SLIP_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.STATED_CLAMPING_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.TIP_MARGIN_FIXED;
import static org.standproud.mechanics.evidence.Vocabulary.TIP_MARGIN_MOVABLE;
import static org.standproud.mechanics.evidence.Vocabulary.TURNING_STIFFNESS_FIXED;
import static org.standproud.mechanics.evidence.Vocabulary.TURNING_STIFFNESS_MOVABLE;
import static org.standproud.mechanics.evidence.Vocabulary.VISE_FORCE;

import java.util.List;
import org.standproud.mechanics.coupling.EndLoad;
import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.holding.PackingBody;
import org.standproud.mechanics.holding.ViseHolding;
import org.standproud.mechanics.holding.jaw.Rocking;
import org.standproud.mechanics.holding.slip.Margin;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.Stock;

/** Whether the vise holds the stock against the cut. */
final class HoldingFacts {

  private static final Basis VISE =
      Basis.on(
          "hold.vise",
          "hold.clampingForce",
          "hold.handleTorque",
          "hold.jawFriction",
          "hold.gripDepth",
          "hold.packing",
          "hold.seat",
          "hold.stop",
          "stock");

  private HoldingFacts() {}

  static void state(StandingCut cut, FactSheet sheet) {
    ViseHolding holding = cut.holding();
    Hold hold = cut.setup().hold();
    Basis basis =
        ForceFacts.basis(cut.forces())
            .and(VISE)
            .assuming(holding.assumptions())
            .assuming(List.of(EndLoad.REBOUND));
    Basis vise = VISE.assuming(holding.assumptions());
    stateClaim(hold, sheet);
    stateRock(holding, vise, sheet);
    sheet.number(CLAMPING_FORCE, holding.clampingForceN(), vise);
    sheet.number(JAW_FRICTION, holding.friction(), vise);
    sheet.number(SLIP_MARGIN, holding.slipMargin(), basis);
    sheet.number(LIFT_MARGIN, holding.liftMargin(), basis);
    sheet.number(TIP_MARGIN_FIXED, holding.tipMarginTowardFixed(), basis);
    sheet.number(TIP_MARGIN_MOVABLE, holding.tipMarginAway(), basis);
    sheet.number(
        NO_GAP_MARGIN, lesser(holding.noGapMarginTowardFixed(), holding.noGapMarginAway()), basis);
    sheet.number(HOLDING_MARGIN, holding.combinedMargin(), basis);
    double gripM = hold.gripDepthM();
    sheet.number(CONTACT_RATIO, holding.contactHeightM().map(h -> Math.min(1, h / gripM)), basis);
    sheet.number(JAW_GAP_DEPTH, holding.contactHeightM().map(h -> gripM - h), basis);
    stateRoot(holding, basis, vise, sheet);
    sheet.number(JAW_PRESSURE_RATIO, pressureRatio(holding, hold, cut.setup().stock()), basis);
    sheet.number(CLAMP_BOW, new Band(0, holding.bowM().likely(), holding.bowM().high()), vise);
    sheet.number(BEST_PACKING_DEPTH, holding.bestPackingDepthM(), basis);
  }

  private static void stateClaim(Hold hold, FactSheet sheet) {
    Band claimed = hold.clampingForceN();
    Basis said = Basis.on("hold.clampingForce");
    if (claimed == null) {
      sheet.missing(STATED_CLAMPING_FORCE, "the clamping force, if it was measured", said);
    } else {
      sheet.number(STATED_CLAMPING_FORCE, claimed, said);
    }
    sheet.number(VISE_FORCE, hold.vise().greatestClampingForceN(), Basis.on("hold.vise"));
  }

  /** The root each way: how it turns under a push toward either jaw, and how long it is held. */
  private static void stateRoot(ViseHolding holding, Basis cut, Basis vise, FactSheet sheet) {
    sheet.number(CONTACT_LENGTH, holding.contactLengthM(), vise);
    sheet.number(TURNING_STIFFNESS_FIXED, holding.rootTurningTowardNmPerRad(), cut);
    sheet.number(TURNING_STIFFNESS_MOVABLE, holding.rootTurningAwayNmPerRad(), cut);
  }

  /** A rock that hangs on a spot nobody measured is neither told nor ruled out. */
  private static void stateRock(ViseHolding holding, Basis basis, FactSheet sheet) {
    if (holding.rocking() == Rocking.ON_AN_ASSUMED_SPOT) {
      sheet.missing(
          MAY_ROCK,
          "the highest spot of the gripped faces, with a straight edge and feelers",
          basis);
    } else {
      sheet.yesNo(MAY_ROCK, holding.rocking() == Rocking.ON_A_GAP, basis);
    }
  }

  /**
   * The greater of the pressure on a face and that of packing harder than the stock. Softer packing
   * is meant to yield; where the stock tips, no pressure is meant and the face is taken as it lies.
   */
  private static Band pressureRatio(ViseHolding holding, Hold hold, Stock stock) {
    Band face = holding.jawPressureRatio();
    Band told = face.high() >= Margin.GREATEST ? Band.exactly(face.low()) : face;
    boolean hard =
        hold.packing().stream()
            .anyMatch(
                piece ->
                    PackingBody.of(piece.material()).yieldPa().likely()
                        >= stock.material().yieldPa().likely());
    return hard ? lesser(told.times(-1), holding.packingYieldRatio().times(-1)).times(-1) : told;
  }

  private static Band lesser(Band a, Band b) {
    return new Band(
        Math.min(a.low(), b.low()), Math.min(a.likely(), b.likely()), Math.min(a.high(), b.high()));
  }
}
