package org.standproud.mechanics.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.mechanics.holding.jaw.Rocking;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.mechanics.holding.slip.Margin;
import org.standproud.setup.Band;
import org.standproud.setup.ClampScrew;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialBuilder;
import org.standproud.setup.MaterialGroup;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.Seat;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Stop;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;

class ViseHoldingTest {

  private static final Band ZERO = Band.exactly(0);

  static Vise vise(JawSurface surface, double liftRad) {
    ClampScrew screw =
        new ClampScrew(
            0.018,
            0.004,
            Math.toRadians(15),
            new Band(0.08, 0.12, 0.15),
            0.028,
            new Band(0.08, 0.12, 0.15));
    return ViseBuilder.builder()
        .name("150 mm vise")
        .jawWidthM(0.150)
        .jawHeightM(0.040)
        .greatestOpeningM(0.200)
        .bedHeightM(0.060)
        .screw(screw)
        .greatestClampingForceN(40_000)
        .jawSurface(surface)
        .fixedJawStiffnessNPerM(new Band(2e8, 4e8, 6e8))
        .movableJawStiffnessNPerM(new Band(5e7, 1e8, 2e8))
        .movableJawLiftRad(Band.exactly(liftRad))
        .build();
  }

  static Stock stock(StockSurface surface, Double highSpotM) {
    CuttingRange range = new CuttingRange(0.5, 2, 1e-5, 1e-4);
    Material steel =
        MaterialBuilder.builder()
            .name("1045")
            .group(MaterialGroup.P)
            .specificCuttingForcePa(Band.exactly(1.7e9))
            .chipExponent(Band.exactly(0.24))
            .youngsModulusPa(Band.exactly(205e9))
            .poissonsRatio(0.29)
            .densityKgPerM3(7850)
            .yieldPa(Band.exactly(310e6))
            .hss(range)
            .carbide(range)
            .source("test")
            .build();
    return StockBuilder.builder()
        .lengthM(0.120)
        .thicknessM(0.010)
        .heightM(0.075)
        .material(steel)
        .surface(surface)
        .highSpotM(highSpotM)
        .deburred(true)
        .build();
  }

  static Hold hold(Vise vise, double gripM, Band clamp, Band friction, List<Packing> packing) {
    return Hold.in(vise, gripM)
        .clamping(clamp, null, friction)
        .packing(packing)
        .seat(Seat.PARALLELS)
        .stop(Stop.NONE)
        .held();
  }

  static HoldingLoad load(double x, double y, double z, double h) {
    return new HoldingLoad(
        Band.exactly(Math.min(x, 0)),
        Band.exactly(Math.max(x, 0)),
        Band.exactly(Math.min(y, 0)),
        Band.exactly(Math.max(y, 0)),
        Band.exactly(Math.min(z, 0)),
        Band.exactly(Math.max(z, 0)),
        h,
        0,
        0);
  }

  private static final List<Packing> WIRE =
      List.of(new Packing(JawSide.MOVABLE, PackingKind.WIRE, PackingMaterial.COPPER, 0.003, 0.006));

  private static ViseHolding wired(HoldingLoad load) {
    return ViseHolding.of(
        new HoldingInput(
            hold(vise(JawSurface.GROUND, 0), 0.015, Band.exactly(20_000), Band.exactly(0.15), WIRE),
            stock(StockSurface.MACHINED, 0.0),
            load,
            FaceState.CLEAN));
  }

  @Test
  void aKnownSlipCaseComesOutOfTheWholeEntry() {
    // Derived from statics: 2 mu N = 6000 N against 1200 N lengthwise.
    assertThat(wired(load(1200, 0, 0, 0.06)).slipMargin().likely()).isCloseTo(5, within(1e-9));
    // hypot(300, 400) = 500
    assertThat(wired(load(300, 0, 400, 0.06)).slipMargin().likely()).isCloseTo(12, within(1e-9));
    assertThat(wired(load(0, 0, 600, 0.06)).liftMargin().likely()).isCloseTo(10, within(1e-9));
  }

  @Test
  void pushTowardAndAwayAreJudgedAgainstTheirOwnLimits() {
    ViseHolding toward = wired(load(0, 400, 0, 0.06));
    assertThat(toward.tipMarginTowardFixed().high()).isCloseTo(20_000 * 0.1 / 400, within(1e-9));
    assertThat(toward.tipMarginAway().low()).isEqualTo(Margin.GREATEST);
    ViseHolding away = wired(load(0, -400, 0, 0.06));
    assertThat(away.tipMarginTowardFixed().low()).isEqualTo(Margin.GREATEST);
    assertThat(away.tipMarginAway().likely()).isCloseTo(20_000 * 0.009 / 0.075 / 400, within(1e-9));
  }

  @Test
  void withoutAnyForceEveryMarginIsTheGreatestAndNothingIsInfinite() {
    ViseHolding idle = wired(load(0, 0, 0, 0.06));
    assertThat(idle.slipMargin()).isEqualTo(Band.exactly(Margin.GREATEST));
    assertThat(idle.combinedMargin()).isEqualTo(Band.exactly(Margin.GREATEST));
    assertThat(idle.tipMarginAway()).isEqualTo(Band.exactly(Margin.GREATEST));
  }

  @Test
  void aStopTakesThePushTowardItsOwnSideOnly() {
    Hold stopped =
        Hold.in(vise(JawSurface.GROUND, 0), 0.015)
            .clamping(Band.exactly(20_000), null, Band.exactly(0.15))
            .packing(WIRE)
            .seat(Seat.PARALLELS)
            .stop(Stop.PLUS_X)
            .held();
    Stock stock = stock(StockSurface.MACHINED, 0.0);
    ViseHolding into =
        ViseHolding.of(new HoldingInput(stopped, stock, load(1200, 0, 0, 0.06), FaceState.CLEAN));
    ViseHolding off =
        ViseHolding.of(new HoldingInput(stopped, stock, load(-1200, 0, 0, 0.06), FaceState.CLEAN));
    assertThat(into.slipMargin().likely()).isEqualTo(Margin.GREATEST);
    assertThat(off.slipMargin().likely()).isCloseTo(5, within(1e-9));
    assertThat(into.combinedMargin().likely()).isGreaterThan(off.combinedMargin().likely());
  }

  @Test
  void aSeatTakesADownwardForceButNotAnUpwardOne() {
    assertThat(wired(load(0, 0, -600, 0.06)).combinedMargin().likely()).isEqualTo(Margin.GREATEST);
    assertThat(wired(load(0, 0, 600, 0.06)).combinedMargin().likely()).isLessThan(10.001);
  }

  @Test
  void unknownClampingForceTakesTheHandCrankBandAndSaysSo() {
    ViseHolding holding =
        ViseHolding.of(
            new HoldingInput(
                hold(vise(JawSurface.GROUND, 0), 0.015, null, null, WIRE),
                stock(StockSurface.MACHINED, 0.0),
                load(500, 200, 50, 0.06),
                FaceState.CLEAN));
    assertThat(holding.clampingForceN().likely()).isCloseTo(23_190, within(10.0));
    assertThat(holding.clampingForceN().low()).isLessThan(9_000);
    assertThat(holding.assumptions())
        .extracting(a -> a.input().text())
        .contains("/hold/clampingForce", "/hold/jawFriction");
    assertThat(holding.friction()).isEqualTo(new Band(0.10, 0.14, 0.20));
  }

  @Test
  void theViseNeverClampsHarderThanItsMakerAllows() {
    ViseHolding holding =
        ViseHolding.of(
            new HoldingInput(
                hold(vise(JawSurface.GROUND, 0), 0.015, Band.between(30_000, 90_000), null, WIRE),
                stock(StockSurface.MACHINED, 0.0),
                load(500, 200, 50, 0.06),
                FaceState.CLEAN));
    assertThat(holding.clampingForceN().high()).isEqualTo(40_000);
    assertThat(holding.assumptions())
        .extracting(a -> a.input().text())
        .contains("/hold/vise/greatestClampingForce");
  }

  @Test
  void anUnflatFaceWithoutPackingIsAHingeAtWorstAndAWireCuresIt() {
    Stock rolled = stock(StockSurface.ROLLED, null);
    Vise vise = vise(JawSurface.GROUND, 0);
    Band clamp = Band.exactly(20_000);
    ViseHolding bare =
        ViseHolding.of(
            new HoldingInput(
                hold(vise, 0.015, clamp, null, List.of()),
                rolled,
                load(100, 200, 0, 0.06),
                FaceState.CLEAN));
    assertThat(bare.rocking()).isEqualTo(Rocking.ON_AN_ASSUMED_SPOT);
    // At worst the cut moves by the gap before the jaw bears again: theta_0 = M/k, gap over grip.
    double rock = 200 * 0.06 / bare.rootTurningTowardNmPerRad().low() * (0.06 + 0.015);
    assertThat(rock).isBetween(0.1e-3, 0.5e-3);
    Packing middle =
        new Packing(JawSide.MOVABLE, PackingKind.WIRE, PackingMaterial.COPPER, 0.003, 0.0075);
    ViseHolding packed =
        ViseHolding.of(
            new HoldingInput(
                hold(vise, 0.015, clamp, null, List.of(middle)),
                rolled,
                load(100, 200, 0, 0.06),
                FaceState.CLEAN));
    assertThat(packed.rootTurningTowardNmPerRad().low()).isPositive();
    assertThat(packed.tipMarginTowardFixed().low()).isGreaterThan(1);
    assertThat(packed.packingYieldRatio().likely()).isGreaterThan(1);
    assertThat(packed.bowMargin().likely()).isLessThan(Margin.GREATEST);
  }

  @Property(tries = 300)
  void nothingLeavesThatIsNotFinite(
      @ForAll @DoubleRange(min = -5000, max = 5000) double x,
      @ForAll @DoubleRange(min = -5000, max = 5000) double y,
      @ForAll @DoubleRange(min = -5000, max = 5000) double z,
      @ForAll @DoubleRange(min = 1, max = 300) double heightMm,
      @ForAll StockSurface surface,
      @ForAll JawSurface jaw)
      throws ReflectiveOperationException {
    ViseHolding holding =
        ViseHolding.of(
            new HoldingInput(
                hold(vise(jaw, 1e-4), 0.015, null, null, List.of()),
                stock(surface, null),
                load(x, y, z, heightMm * 1e-3),
                FaceState.CLEAN));
    for (RecordComponent part : ViseHolding.class.getRecordComponents()) {
      if (part.getType() == Band.class) {
        Band band = (Band) part.getAccessor().invoke(holding);
        assertThat(band.low()).as(part.getName()).isNotNegative();
        assertThat(Double.isFinite(band.high())).as(part.getName()).isTrue();
      }
    }
  }

  @Property(tries = 3000)
  void theBandHoldsTheMarginsOfEverySetUpInside(
      @ForAll @DoubleRange(min = 0, max = 1) double a,
      @ForAll @DoubleRange(min = 0, max = 1) double b,
      @ForAll @DoubleRange(min = 0, max = 1) double c,
      @ForAll @DoubleRange(min = 0, max = 1) double d) {
    Band clamp = new Band(10_000, 20_000, 30_000);
    Band friction = new Band(0.1, 0.15, 0.2);
    UnaryOperator<Band> wide = v -> Band.between(v.likely() * 0.7, v.likely() * 1.4);
    ViseHolding whole =
        sampled(clamp, friction, wide.apply(Band.exactly(500)), wide.apply(Band.exactly(300)));
    ViseHolding one =
        sampled(
            Band.exactly(10_000 + 20_000 * a),
            Band.exactly(0.1 + 0.1 * b),
            Band.exactly(350 + 350 * c),
            Band.exactly(210 + 210 * d));
    inside(one.slipMargin(), whole.slipMargin());
    inside(one.combinedMargin(), whole.combinedMargin());
    inside(one.tipMarginTowardFixed(), whole.tipMarginTowardFixed());
    inside(one.tipMarginAway(), whole.tipMarginAway());
    inside(one.noGapMarginAway(), whole.noGapMarginAway());
    inside(one.liftMargin(), whole.liftMargin());
    inside(one.rootTurningTowardNmPerRad(), whole.rootTurningTowardNmPerRad());
    inside(one.rootTurningAwayNmPerRad(), whole.rootTurningAwayNmPerRad());
    inside(one.rootStiffnessNPerM(), whole.rootStiffnessNPerM());
    inside(one.contactHeightM(), whole.contactHeightM());
    inside(one.jawPressureRatio(), whole.jawPressureRatio());
    inside(one.bowMargin(), whole.bowMargin());
    inside(one.packingYieldRatio(), whole.packingYieldRatio());
    inside(one.bestPackingDepthM(), whole.bestPackingDepthM());
  }

  private static ViseHolding sampled(Band clamp, Band friction, Band along, Band across) {
    HoldingLoad load =
        new HoldingLoad(
            along.times(-0.5),
            along,
            across.times(-0.6),
            across,
            ZERO,
            along.times(0.3),
            0.06,
            0.03,
            0.002);
    return ViseHolding.of(
        new HoldingInput(
            hold(vise(JawSurface.GROUND, 0), 0.015, clamp, friction, WIRE),
            stock(StockSurface.MACHINED, 0.0),
            load,
            FaceState.CLEAN));
  }

  private static void inside(Band inner, Band outer) {
    assertThat(inner.low()).isGreaterThanOrEqualTo(outer.low() * (1 - 1e-6) - 1e-9);
    assertThat(inner.high()).isLessThanOrEqualTo(outer.high() * (1 + 1e-6) + 1e-9);
  }

  @Test
  void handleTorqueGivesTheForceOfTheScrew() {
    Hold turned =
        Hold.in(vise(JawSurface.GROUND, 0), 0.015)
            .clamping(null, Band.exactly(80), null)
            .packing(WIRE)
            .seat(Seat.BED)
            .stop(Stop.NONE)
            .held();
    ViseHolding holding =
        ViseHolding.of(
            new HoldingInput(
                turned, stock(StockSurface.MACHINED, 0.0), load(1, 1, 1, 0.06), FaceState.CLEAN));
    // Derived from the screw formula: friction 0.15, 0.12, 0.08 at 80 N m.
    assertThat(holding.clampingForceN().low()).isCloseTo(19_250, within(6.0));
    assertThat(holding.clampingForceN().likely()).isCloseTo(23_190, within(6.0));
    assertThat(holding.clampingForceN().high()).isCloseTo(31_870, within(6.0));
  }

  @Test
  void aWireAtTheFixedJawLeavesTheMovableFaceAloneToResistTurning() {
    List<Packing> fixedWire =
        List.of(new Packing(JawSide.FIXED, PackingKind.WIRE, PackingMaterial.COPPER, 0.003, 0.007));
    ViseHolding holding =
        ViseHolding.of(
            new HoldingInput(
                hold(
                    vise(JawSurface.GROUND, 0),
                    0.015,
                    Band.exactly(20_000),
                    Band.exactly(0.15),
                    fixedWire),
                stock(StockSurface.MACHINED, 0.0),
                load(100, 200, 0, 0.06),
                FaceState.CLEAN));
    assertThat(holding.rootTurningTowardNmPerRad().low()).isZero();
    assertThat(holding.contactHeightM()).isEqualTo(Band.exactly(0));
    assertThat(holding.limitTowardFixedN().high()).isCloseTo(20_000 * 0.008 / 0.067, within(1e-6));
  }

  @Test
  void aHarderPushLeavesLessContactAndPressesHarderAtTheLip() {
    ViseHolding soft = wired(load(0, 300, 0, 0.06));
    ViseHolding hard = wired(load(0, 1500, 0, 0.06));
    assertThat(hard.contactHeightM().likely()).isLessThan(soft.contactHeightM().likely());
    assertThat(hard.jawPressureRatio().likely()).isGreaterThan(soft.jawPressureRatio().likely());
    assertThat(hard.rootTurningTowardNmPerRad().likely())
        .isLessThan(soft.rootTurningTowardNmPerRad().likely());
    assertThat(wired(load(0, 3000, 0, 0.06)).jawPressureRatio().likely())
        .isEqualTo(Margin.GREATEST);
  }

  @Test
  void knownLimitsAreRefused() {
    assertThatThrownBy(() -> wired(load(0, 0, 0, 5))).isInstanceOf(OutsideValidity.class);
    List<Packing> below =
        List.of(
            new Packing(JawSide.MOVABLE, PackingKind.WIRE, PackingMaterial.COPPER, 0.003, 0.020));
    assertThatThrownBy(
            () ->
                ViseHolding.of(
                    new HoldingInput(
                        hold(vise(JawSurface.GROUND, 0), 0.015, null, null, below),
                        stock(StockSurface.MACHINED, 0.0),
                        load(1, 1, 1, 0.06),
                        FaceState.CLEAN)))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining("depth of the packing");
  }
}
