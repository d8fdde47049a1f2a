package org.standproud.mechanics.gathering;

import static org.standproud.mechanics.evidence.Vocabulary.BEST_PACKING_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.CLAMPING_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.CLAMP_BOW;
import static org.standproud.mechanics.evidence.Vocabulary.CONTACT_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.HOLDING_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_FRICTION;
import static org.standproud.mechanics.evidence.Vocabulary.JAW_PRESSURE_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.LIFT_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.NO_GAP_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.SLIP_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.TIP_MARGIN_FIXED;
import static org.standproud.mechanics.evidence.Vocabulary.TIP_MARGIN_MOVABLE;

import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.force.PathForces;
import org.standproud.mechanics.gathering.FactSheet.Basis;
import org.standproud.mechanics.holding.HoldingInput;
import org.standproud.mechanics.holding.ViseHolding;
import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

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

  /** The hold with the cut at the upper end of the stock, where its lever is longest. */
  static ViseHolding holding(PassForces forces, Setup setup) {
    PathForces path = forces.path();
    HoldingLoad load =
        new HoldingLoad(
            path.x().leastN(),
            path.x().greatestN(),
            path.y().leastN(),
            path.y().greatestN(),
            path.z().leastN(),
            path.z().greatestN(),
            setup.stickOutM(),
            setup.stock().lengthM() / 2,
            setup.stock().thicknessM() / 2);
    return ViseHolding.of(new HoldingInput(setup.hold(), setup.stock(), load, FaceState.OILY));
  }

  static void state(ViseHolding holding, PassForces forces, Setup setup, FactSheet sheet) {
    Basis basis = ForceFacts.basis(forces).and(VISE).assuming(holding.assumptions());
    Basis vise = VISE.assuming(holding.assumptions());
    sheet.number(CLAMPING_FORCE, holding.clampingForceN(), vise);
    sheet.number(JAW_FRICTION, holding.friction(), vise);
    sheet.number(SLIP_MARGIN, holding.slipMargin(), basis);
    sheet.number(LIFT_MARGIN, holding.liftMargin(), basis);
    sheet.number(TIP_MARGIN_FIXED, holding.tipMarginTowardFixed(), basis);
    sheet.number(TIP_MARGIN_MOVABLE, holding.tipMarginAway(), basis);
    sheet.number(
        NO_GAP_MARGIN, lesser(holding.noGapMarginTowardFixed(), holding.noGapMarginAway()), basis);
    sheet.number(HOLDING_MARGIN, holding.combinedMargin(), basis);
    double gripM = setup.hold().gripDepthM();
    sheet.number(CONTACT_RATIO, holding.contactHeightM().map(h -> Math.min(1, h / gripM)), basis);
    sheet.number(JAW_PRESSURE_RATIO, holding.jawPressureRatio(), basis);
    sheet.number(CLAMP_BOW, holding.bowM(), vise);
    sheet.number(BEST_PACKING_DEPTH, holding.bestPackingDepthM(), basis);
  }

  private static Band lesser(Band a, Band b) {
    return new Band(
        Math.min(a.low(), b.low()), Math.min(a.likely(), b.likely()), Math.min(a.high(), b.high()));
  }
}
