package org.standproud.mechanics.coupling;

import java.util.List;
import java.util.Optional;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.drive.HandFeed;
import org.standproud.mechanics.engagement.EdgeInCut;
import org.standproud.mechanics.engagement.Engagement;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.holding.HoldingInput;
import org.standproud.mechanics.holding.ViseHolding;
import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.mechanics.holding.jaw.JawSpan;
import org.standproud.mechanics.plate.PlateInput;
import org.standproud.mechanics.plate.PlatePoint;
import org.standproud.mechanics.plate.PlateResponse;
import org.standproud.mechanics.vibration.StabilityInput;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.Material;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;

/**
 * One cut with its forces and its hold, from which the input of the plate and of chatter follows.
 *
 * @param setup the set-up with the feed that the teeth really see
 * @param cutting how the cutter meets the stock
 * @param forces the forces of the pass
 * @param holding what the vise can take, with the cut at an upper end of the stock
 */
public record StandingCut(
    Setup setup, Engagement.Cutting cutting, PassForces forces, ViseHolding holding) {

  /**
   * Works a set-up out as far as its hold.
   *
   * @param meant a checked set-up
   * @return empty if the cutter passes beside the stock
   * @throws OutsideValidity if an input is outside the range of the formulas
   */
  public static Optional<StandingCut> of(Setup meant) {
    Setup setup = HandFeed.asTheTeethSeeIt(meant);
    Optional<PassForces> forces = PassForces.of(ForceInput.from(setup));
    return Engagement.of(setup.stock(), setup.cutter(), setup.cut())
                instanceof Engagement.Cutting cutting
            && forces.isPresent()
        ? Optional.of(of(setup, cutting, forces.get()))
        : Optional.empty();
  }

  /**
   * Puts a hold to a cut that was worked out already.
   *
   * @param setup the set-up with the feed that the teeth really see
   * @param cutting how the cutter meets the stock
   * @param forces the forces of the pass
   * @throws OutsideValidity if an input is outside the range of the formulas
   */
  public static StandingCut of(Setup setup, Engagement.Cutting cutting, PassForces forces) {
    return new StandingCut(setup, cutting, forces, ViseHolding.of(holdingInput(setup, forces)));
  }

  private static HoldingInput holdingInput(Setup setup, PassForces forces) {
    return new HoldingInput(
        setup.hold(), setup.stock(), EndLoad.of(forces.path(), setup), FaceState.of(setup.hold()));
  }

  /** What the hold was worked out from: coolant on the faces, the cut at an end of the stock. */
  public HoldingInput holdingInput() {
    return holdingInput(setup, forces);
  }

  /**
   * Thickness of the wall that still stands behind or under a cut in m.
   *
   * @param cutting how the cutter meets the stock
   * @param setup whose stock it is
   */
  public static double wallLeftM(Engagement.Cutting cutting, Setup setup) {
    double thicknessM = setup.stock().thicknessM();
    return setup.cut().operation() == Operation.BROAD_SIDE
        ? thicknessM - cutting.engagedWidthM()
        : thicknessM;
  }

  /**
   * The standing plate on its jaws, loaded at the end of its top edge, where it gives most.
   *
   * @throws OutsideValidity if it is no plate the formulas know
   */
  public PlateInput plate() {
    Stock stock = setup.stock();
    Material material = stock.material();
    return new PlateInput(
        setup.stickOutM(),
        stock.lengthM(),
        wallLeftM(cutting, setup),
        material.youngsModulusPa(),
        material.poissonsRatio(),
        material.densityKgPerM3(),
        perMetre(holding.rootStiffnessNPerM()),
        perMetre(softer()),
        JawSpan.of(setup.hold(), stock.lengthM()).evenlyHeldM(stock.lengthM()),
        new PlatePoint(stock.lengthM() / 2, setup.stickOutM()));
  }

  private Band softer() {
    Band toward = holding.rootTurningTowardNmPerRad();
    Band away = holding.rootTurningAwayNmPerRad();
    return new Band(
        Math.min(toward.low(), away.low()),
        Math.min(toward.likely(), away.likely()),
        Math.max(toward.high(), away.high()));
  }

  /** A hinge has no stiffness at all; the plate wants a number that is next to none. */
  private Band perMetre(Band whole) {
    return whole.map(k -> Math.max(1, k / holding.contactLengthM()));
  }

  /**
   * The cut on the ringing plate, with the spindle and the cutter taken as rigid.
   *
   * @param plate how the plate gives and rings
   * @throws OutsideValidity if a value is outside the range of the formulas
   */
  public StabilityInput chatter(PlateResponse plate) {
    return new StabilityInput(
        plate.modesAtCorner(),
        StabilityInput.USUAL_DAMPING,
        List.of(),
        List.of(),
        tangentialPa(),
        radialRatio(),
        setup.cutter().teeth(),
        forces.steadyArc().entryRad(),
        forces.steadyArc().exitRad(),
        setup.cutter().diameterM(),
        setup.cut().spindleSpeedRevPerS());
  }

  /** Mean tangential force over the mean chip section, z a_p f_z a_e / (2 pi R), in Pa. */
  private Band tangentialPa() {
    double sectionM2 =
        setup.cutter().teeth()
            * setup.cut().axialDepthM()
            * setup.cut().feedPerToothM().likely()
            * forces.steadyArc().depthInRadii()
            / (2 * Math.PI);
    return forces.steady().meanTangentialN().times(1 / sectionM2);
  }

  /** Likely radial over tangential force: the thrust normal to the edge, seen in the plan. */
  private double radialRatio() {
    Cut cut = setup.cut();
    Cutter cutter = setup.cutter();
    EdgeInCut edge =
        EdgeInCut.of(cut.axialDepthM(), cutter.enteringAngleRad(), cutter.cornerRadiusM());
    return ForceInput.from(setup).model().likelyNormalRatio() * edge.sine();
  }
}
