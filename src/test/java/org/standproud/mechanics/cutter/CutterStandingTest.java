package org.standproud.mechanics.cutter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.reach.SmallShop;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Operation;
import org.standproud.setup.ToolMaterial;

class CutterStandingTest {

  private static final Cut PASS =
      SmallShop.pass(Operation.BROAD_SIDE, .01, -.012, FeedDirection.PLUS_X);
  private static final Band STIFF_NOSE = new Band(10e6, 20e6, 40e6);

  private static CutterStanding standing(Cutter cutter, Band forceN) {
    return CutterStanding.of(
        cutter,
        PASS,
        SmallShop.steel(),
        STIFF_NOSE,
        forceN,
        PASS.feedPerToothM(),
        Band.exactly(50e-6));
  }

  private static Cutter carbide(double stickOutM) {
    return SmallShop.endMill(ToolMaterial.CARBIDE, .01, .01, .022, stickOutM);
  }

  /** The stepped carbide cutter of 8.980 um at 100 N [derived] is the least of what gives. */
  @Test
  void holderAndSpindleGiveOnTopOfTheCutter() {
    CutterStanding standing = standing(carbide(.04), Band.exactly(100));

    assertThat(standing.deflectionM().low()).isGreaterThan(8.980e-6 * 600 / 630);
    assertThat(standing.deflectionM().likely()).isGreaterThan(8.980e-6);
    assertThat(standing.deflectionM().likely() * standing.stiffnessNPerM().likely())
        .isCloseTo(100, within(1e-9));
  }

  @Test
  void aNoseThatTiltsGivesMoreThanItsStiffnessSays() {
    Band give = SpindleCompliance.atTipMPerN(Band.exactly(20e6), .15);
    assertThat(give.low()).isCloseTo(1 / 20e6, within(1e-15));
    assertThat(give.likely()).isCloseTo(2.25 / 20e6, within(1e-15));
    assertThat(give.high()).isCloseTo(4 / 20e6, within(1e-15));
  }

  @Property
  void moreStickOutNeverStiffensTheCutter(
      @ForAll @Scale(7) @DoubleRange(min = .025, max = .1) double one,
      @ForAll @Scale(7) @DoubleRange(min = .025, max = .1) double other) {
    CutterStanding shorter = standing(carbide(FastMath.min(one, other)), Band.exactly(100));
    CutterStanding longer = standing(carbide(FastMath.max(one, other)), Band.exactly(100));

    assertThat(shorter.deflectionM().likely()).isLessThanOrEqualTo(longer.deflectionM().likely());
    assertThat(shorter.strengthOverStress().low())
        .isGreaterThanOrEqualTo(longer.strengthOverStress().low());
  }

  @Property
  void moreForceNeverEasesTheCutter(
      @ForAll @Scale(7) @DoubleRange(min = 0, max = 2e4) double forceN) {
    CutterStanding less = standing(carbide(.05), Band.exactly(forceN));
    CutterStanding more = standing(carbide(.05), Band.exactly(forceN * 1.1 + 1));

    assertThat(more.deflectionM().high()).isGreaterThan(less.deflectionM().high());
    assertThat(more.strengthOverStress().low())
        .isLessThanOrEqualTo(less.strengthOverStress().low());
    assertThat(less.strengthOverStress().high()).isLessThanOrEqualTo(CutterStanding.UNLOADED);
  }

  @Test
  void anUnloadedCutterIsFiniteInEveryNumber() {
    CutterStanding idle = standing(carbide(.05), Band.exactly(0));
    assertThat(idle.deflectionM().high()).isZero();
    assertThat(idle.strengthOverStress().low()).isLessThanOrEqualTo(CutterStanding.UNLOADED);
  }

  @Test
  void aFaceMillBendsInItsArborNotInItsBody() {
    CutterStanding face = standing(SmallShop.faceMill(), Band.exactly(500));
    assertThat(face.assumptions()).anyMatch(a -> a.input().text().equals("/cutter/shankDiameter"));
    assertThat(face.bendingStressPa().likely())
        .isCloseTo(32 * 500 * .05 / (FastMath.PI * FastMath.pow(.022, 3)), within(1.0));
  }

  /**
   * At least one third of TRS is left at 1 kN: an HSS D20 cutter, [derived] from 74.60 MPa at 500
   * N.
   */
  @Test
  void anHssCutterBreaksAtItsRuptureStrength() {
    Cutter hss = SmallShop.endMill(ToolMaterial.HSS, .02, .02, .06, .06);
    assertThat(standing(hss, Band.exactly(500)).strengthOverStress().low())
        .isCloseTo(3e9 / 74.60e6, within(.01));
  }

  @Test
  void speedAndFeedAreSetAgainstTheUnionOfPublishedRanges() {
    CutterStanding slow = standing(carbide(.04), Band.exactly(100));
    assertThat(slow.cuttingSpeedMPerS()).isCloseTo(FastMath.PI * .01 * 4, within(1e-12));
    assertThat(slow.speed().perhapsWithin()).isFalse();
    assertThat(slow.speed().overLeast().likely()).isLessThan(1);
    assertThat(slow.feed().surelyWithin()).isTrue();
  }

  /** Handbooks differ by half either way, so a band astride a limit is only perhaps within. */
  @Test
  void aFeedBandAstrideALimitIsOnlyPerhapsWithin() {
    PublishedRange range =
        PublishedRange.of("feed per tooth", new Band(.05e-3, .1e-3, .2e-3), .08e-3, .25e-3);
    assertThat(range.perhapsWithin()).isTrue();
    assertThat(range.surelyWithin()).isFalse();
  }

  @Test
  void aChipThinnerThanAFifthOfTheEdgeRoundingSurelyRubs() {
    assertThat(LeastChip.chipOverLeast(Band.exactly(1.9e-6), Band.exactly(10e-6)).high())
        .isLessThan(1);
    assertThat(LeastChip.chipOverLeast(Band.exactly(4.1e-6), Band.exactly(10e-6)).low())
        .isGreaterThan(1);
    assertThatThrownBy(() -> LeastChip.chipOverLeast(Band.exactly(1e-6), Band.exactly(0)))
        .isInstanceOf(OutsideValidity.class);
  }

  @Test
  void anEdgeOfUnknownStateMayRubWhereAFreshOneBites() {
    Band fresh = EdgeRounding.growth(EdgeCondition.FRESH).times(10e-6);
    Band unknown = EdgeRounding.growth(null).times(10e-6);
    Band chip = Band.exactly(5e-6);
    assertThat(LeastChip.chipOverLeast(chip, fresh).low()).isGreaterThan(1);
    assertThat(LeastChip.chipOverLeast(chip, unknown).low()).isLessThan(1);
    assertThat(LeastChip.chipOverLeast(chip, unknown).high()).isGreaterThan(1);
  }

  @Test
  void theOverhangRatioTakesTheThinnerOfCutterAndShank() {
    Cutter reduced = SmallShop.endMill(ToolMaterial.CARBIDE, .012, .010, .02, .05);
    assertThat(standing(reduced, Band.exactly(10)).overhangRatio()).isCloseTo(5, within(1e-12));
  }
}
