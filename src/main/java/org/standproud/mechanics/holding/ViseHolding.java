package org.standproud.mechanics.holding;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.jaw.Rocking;
import org.standproud.mechanics.holding.slip.Margin;
import org.standproud.setup.Band;
import org.standproud.setup.Packing;
import org.standproud.setup.Vise;

/**
 * How stock is held in a vise against the forces of a cut. A margin is capacity over demand: above
 * one it holds; it is {@link Margin#GREATEST} where nothing is asked. No safety factor is in any of
 * these numbers. The low end of each margin is the adverse end of everything not known.
 *
 * @param clampingForceN force of one jaw in N
 * @param friction coefficient of the weaker face
 * @param slipMargin slip alone, lengthwise and upright together
 * @param liftMargin lift alone
 * @param limitTowardFixedN rigid tip limit toward the fixed jaw in N
 * @param limitAwayN rigid tip limit away from it in N
 * @param tipMarginTowardFixed tip alone, toward the fixed jaw
 * @param tipMarginAway tip alone, away from it
 * @param noGapMarginTowardFixed push toward the fixed jaw at which a gap begins
 * @param noGapMarginAway push away from it at which a gap begins
 * @param combinedMargin slip, lift, pitch, yaw and tip together
 * @param frictionCoupleNm what friction on the faces could add against tipping in N m, counted in
 *     none of the margins
 * @param rootTurningTowardNmPerRad turning stiffness of the whole root about X under a push toward
 *     the fixed jaw, in N m/rad; zero for a hinge
 * @param rootTurningAwayNmPerRad the same under a push away from it
 * @param rootStiffnessNPerM stiffness of the whole root across the jaws in N/m
 * @param contactLengthM length of jaw in contact along X in m
 * @param contactHeightM gripped height that stays on the fixed jaw at the peaks in m
 * @param jawPressureRatio greatest pressure on a flat face over the stock's yield stress; {@link
 *     Margin#GREATEST} if the stock tips; crushing at a single high spot is not in it
 * @param packingYieldRatio line pressure over what begins to flow the softer of wire and stock;
 *     zero without a wire or strip
 * @param bowMargin stock's yield stress over its bending stress in the grip
 * @param bowM bow of the stock over the gripped height in m
 * @param bestPackingDepthM depth for a wire at the movable jaw that makes the smaller tip margin
 *     greatest, in m
 * @param rocking whether the stock may rock in the jaws on one unknown line of contact
 * @param assumptions what was taken for what was not given
 */
public record ViseHolding(
    Band clampingForceN,
    Band friction,
    Band slipMargin,
    Band liftMargin,
    Band limitTowardFixedN,
    Band limitAwayN,
    Band tipMarginTowardFixed,
    Band tipMarginAway,
    Band noGapMarginTowardFixed,
    Band noGapMarginAway,
    Band combinedMargin,
    Band frictionCoupleNm,
    Band rootTurningTowardNmPerRad,
    Band rootTurningAwayNmPerRad,
    Band rootStiffnessNPerM,
    double contactLengthM,
    Band contactHeightM,
    Band jawPressureRatio,
    Band packingYieldRatio,
    Band bowMargin,
    Band bowM,
    Band bestPackingDepthM,
    Rocking rocking,
    List<Assumption> assumptions) {

  /** Copies the list. */
  public ViseHolding {
    assumptions = List.copyOf(assumptions);
  }

  /**
   * Computes the holding of one set-up.
   *
   * @param input the hold, the stock and the load
   * @throws OutsideValidity if a value lies outside the range of a formula
   */
  public static ViseHolding of(HoldingInput input) {
    within("stock length", input.stock().lengthM(), 1e-3, 5, "m");
    within("stock thickness", input.stock().thicknessM(), 1e-4, 1, "m");
    within("grip depth", input.hold().gripDepthM(), 1e-3, 0.5, "m");
    within("jaw height", input.hold().vise().jawHeightM(), 1e-3, 0.5, "m");
    checkStiffness(input.hold().vise());
    for (Packing packing : input.hold().packing()) {
      within("size of the packing", packing.sizeM(), 1e-5, 0.1, "m");
    }
    HoldingEnds ends = HoldingEnds.of(input);
    PackingLine line = PackingLine.of(input, ends);
    return new ViseHolding(
        ends.clampingForceN(),
        ends.friction(),
        ends.band(e -> e.grip().slipMargin(e.peaks())),
        ends.band(e -> e.grip().liftMargin(e.peaks())),
        ends.band(HoldingEnd::limitTowardN),
        ends.band(HoldingEnd::limitAwayN),
        ends.band(e -> Margin.of(e.limitTowardN(), e.peaks().towardFixedN())),
        ends.band(e -> Margin.of(e.limitAwayN(), e.peaks().awayN())),
        ends.band(e -> Margin.of(e.noGapTowardN(), e.peaks().towardFixedN())),
        ends.band(e -> Margin.of(e.noGapAwayN(), e.peaks().awayN())),
        ends.band(HoldingEnd::combinedMargin),
        ends.friction().times(ends.clampingForceN()).times(input.stock().thicknessM()),
        ends.turning(HoldingEnd::turningTowardNmPerRad),
        ends.turning(HoldingEnd::turningAwayNmPerRad),
        rootStiffness(ends),
        ends.likely().lengthM(),
        ends.contact(HoldingEnd::contactHeightM),
        jawPressure(input, ends),
        line.yieldRatio(),
        line.bowMargin(),
        line.bowM(),
        ends.bestPackingDepthM(),
        ends.rocking(),
        assumptions(input, ends));
  }

  private static void checkStiffness(Vise vise) {
    within("stiffness of the fixed jaw", vise.fixedJawStiffnessNPerM().low(), 1e5, 1e11, "N/m");
    within("stiffness of the movable jaw", vise.movableJawStiffnessNPerM().low(), 1e5, 1e11, "N/m");
    within("tilt of the movable jaw", vise.movableJawLiftRad().low(), 0, 0.05, "rad");
    within("tilt of the movable jaw", vise.movableJawLiftRad().high(), 0, 0.05, "rad");
  }

  private static Band rootStiffness(HoldingEnds ends) {
    double low = ends.adverse().root().fixedSideNPerM();
    double likely = ends.likely().root().fixedSideNPerM();
    JawRoot best = ends.favourable().root();
    return Band.spanning(likely, low, best.fixedSideNPerM() + best.movableSideNPerM());
  }

  /**
   * The mean pressure bounds it from below; the softest jaws are tried at both clamping forces and
   * the likely ones at the greatest.
   */
  private static Band jawPressure(HoldingInput input, HoldingEnds ends) {
    Band yield = input.stock().material().yieldPa();
    within("yield stress", yield.low(), 1e6, 5e9, "Pa");
    HoldingEnd likely = ends.likely();
    double mean = ends.clampingForceN().low() / (likely.lengthM() * likely.gripM()) / yield.high();
    ToDoubleFunction<HoldingEnd> worst =
        e -> Math.min(Margin.GREATEST, e.facePressurePa() / yield.low());
    return Band.spanning(
        Math.min(Margin.GREATEST, likely.facePressurePa() / yield.likely()),
        mean,
        worst.applyAsDouble(ends.adverse()),
        ends.hardClamped().stream().mapToDouble(worst).max().orElseThrow());
  }

  private static List<Assumption> assumptions(HoldingInput input, HoldingEnds ends) {
    List<Assumption> all = new ArrayList<>(ends.assumptions());
    if (input.hold().seat() == null) {
      all.add(HoldAssumptions.SEAT);
    }
    if (input.hold().stop() == null) {
      all.add(HoldAssumptions.STOP);
    }
    return all;
  }
}
