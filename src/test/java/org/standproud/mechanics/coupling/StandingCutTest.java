package org.standproud.mechanics.coupling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.engagement.Engagement;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.ForceModel;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.holding.ViseHolding;
import org.standproud.mechanics.plate.PlateInput;
import org.standproud.mechanics.plate.PlateResponse;
import org.standproud.mechanics.reach.SmallShop;
import org.standproud.mechanics.vibration.StabilityInput;
import org.standproud.setup.Band;
import org.standproud.setup.Cutter;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.JawSide;
import org.standproud.setup.Operation;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.Setup;
import org.standproud.setup.ToolMaterial;

/** Sizes of the small shop: a plate 120 x 10 x 80 mm of which 60 mm stand out of jaws of 150 mm. */
class StandingCutTest {

  private static final Cutter END_MILL =
      SmallShop.endMill(ToolMaterial.CARBIDE, .016, .016, .032, .050);

  private static final Setup TOP = pass(SmallShop.faceMill(), Operation.TOP_EDGE, .001, 0);

  /** Axis 12 mm from the middle, R 8 mm: the end mill takes 1 mm off one broad side. */
  private static final Setup SIDE = pass(END_MILL, Operation.BROAD_SIDE, .020, -.012);

  private static Setup pass(Cutter cutter, Operation operation, double depthM, double offsetM) {
    return SmallShop.plate(
        cutter, SmallShop.pass(operation, depthM, offsetM, FeedDirection.PLUS_X));
  }

  private static StandingCut standing(Setup setup) {
    return StandingCut.of(setup).orElseThrow();
  }

  @Test
  void aCutterThatPassesBesideTheStockAsksNothing() {
    assertThat(StandingCut.of(pass(END_MILL, Operation.BROAD_SIDE, .020, -.020))).isEmpty();
    assertThat(StandingCut.of(SIDE)).isPresent();
  }

  @Test
  void whatABroadSideCutTakesIsMissingFromTheWallAndWhatATopEdgeCutTakesIsNot() {
    assertThat(standing(SIDE).plate().thicknessM()).isCloseTo(.009, within(1e-12));
    assertThat(standing(TOP).plate().thicknessM()).isCloseTo(.010, within(1e-12));
  }

  @Test
  void thePlateStandsAsFarAsItSticksOutAndIsLoadedAtTheEndOfItsTopEdge() {
    PlateInput plate = standing(TOP).plate();
    assertThat(plate.stickOutM()).isCloseTo(.060, within(1e-12));
    assertThat(plate.lengthM()).isEqualTo(.120);
    assertThat(plate.heldLengthM()).as("the jaws are longer than the stock").isEqualTo(.120);
    assertThat(plate.load().xM()).isEqualTo(.060);
    assertThat(plate.load().zM()).isCloseTo(.060, within(1e-12));
  }

  /** Worked by hand: what 120 mm of jaw carry together, a metre would carry 1/0.12 times. */
  @Test
  void theFootOfThePlateIsTheRootOfTheHoldSpreadOverTheJaws() {
    StandingCut cut = standing(TOP);
    ViseHolding hold = cut.holding();
    PlateInput plate = cut.plate();
    assertThat(plate.rootTranslationNPerM2().likely() * .120)
        .isCloseTo(hold.rootStiffnessNPerM().likely(), within(1.0));
    double softer =
        Math.min(
            hold.rootTurningTowardNmPerRad().likely(), hold.rootTurningAwayNmPerRad().likely());
    assertThat(softer).isGreaterThan(1e3);
    assertThat(plate.rootRotationNPerRad().likely() * .120).isCloseTo(softer, within(1e-3));
  }

  /** Wires on both sides are a hinge: nothing resists turning, and the plate gets next to none. */
  @Test
  void aPlateBetweenTwoWiresHasAFootThatHardlyResistsTurning() {
    Packing movable =
        new Packing(JawSide.MOVABLE, PackingKind.WIRE, PackingMaterial.BRASS, .003, .010);
    Packing fixed = new Packing(JawSide.FIXED, PackingKind.WIRE, PackingMaterial.BRASS, .003, .010);
    Setup hinge =
        new Setup(
            TOP.job(),
            TOP.stock(),
            TOP.hold().but().packing(List.of(movable, fixed)).held(),
            TOP.machine(),
            TOP.cutter(),
            TOP.cut(),
            TOP.units());
    assertThat(standing(hinge).plate().rootRotationNPerRad()).isEqualTo(Band.exactly(1));
  }

  /**
   * With a force in proportion to the chip (exponent 0) the tangential force over the mean chip
   * section is the specific force itself, whatever arc, depth, feed and teeth (definition of the
   * cutting coefficient, Altintas 2012 ch. 2); the bands of the forces add 2 %.
   */
  @Test
  void underAForceInProportionToTheChipChatterMeetsTheSpecificForceItself() {
    ForceModel proportional =
        new ForceModel.Kienzle(
            Band.exactly(1500e6),
            Band.exactly(0),
            Band.exactly(1),
            Band.exactly(0.3),
            Band.exactly(0));
    for (Setup setup : List.of(TOP, SIDE)) {
      Engagement.Cutting cutting =
          (Engagement.Cutting) Engagement.of(setup.stock(), setup.cutter(), setup.cut());
      PassForces forces = PassForces.of(ForceInput.from(setup).with(proportional)).orElseThrow();
      StabilityInput chatter = chatter(StandingCut.of(setup, cutting, forces));
      assertThat(chatter.tangentialPa().likely()).isCloseTo(1500e6, within(20e6));
    }
  }

  private static StabilityInput chatter(StandingCut cut) {
    return cut.chatter(PlateResponse.of(cut.plate()));
  }

  /**
   * KAPR 45 deg, RE 0.8 mm, 1 mm deep: b = 0.8 pi/4 + (1 - 0.23431)/0.70711 = 1.71116 mm, so that
   * 0.58440 of the thrust normal to the edge lies in the plan; all of it where the edge is upright.
   */
  @Test
  void onlyThePartOfTheThrustThatLiesInThePlanRocksThePlate() {
    double normal = ForceInput.from(TOP).model().likelyNormalRatio();
    assertThat(normal).isBetween(0.2, 0.8);
    assertThat(chatter(standing(TOP)).radialRatio()).isCloseTo(.58440 * normal, within(1e-5));
    assertThat(chatter(standing(SIDE)).radialRatio())
        .isCloseTo(
            ForceInput.from(SIDE).model().likelyNormalRatio()
                * .020
                / (.020 + .0004 * (Math.PI / 2 - 1)),
            within(1e-6));
  }

  @Test
  void chatterIsOfTheTeethTheArcAndTheSpeedOfThePass() {
    StabilityInput chatter = chatter(standing(TOP));
    assertThat(chatter.teeth()).isEqualTo(5);
    assertThat(chatter.cutterDiameterM()).isEqualTo(.063);
    assertThat(chatter.revPerS()).isEqualTo(4);
    // acos(5/31.5) = 80.87 deg; the arc is even about straight ahead
    assertThat(Math.toDegrees(chatter.entryRad())).isCloseTo(80.867, within(1e-3));
    assertThat(Math.toDegrees(chatter.exitRad())).isCloseTo(99.133, within(1e-3));
  }
}
