package org.standproud.mechanics.evidence.stage;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;
import org.standproud.setup.Clamp;
import org.standproud.setup.ClampScrew;
import org.standproud.setup.Cut;
import org.standproud.setup.CutBuilder;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterBuilder;
import org.standproud.setup.CutterKind;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.ForceCoefficients;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.JobReference;
import org.standproud.setup.Machine;
import org.standproud.setup.MachineBuilder;
import org.standproud.setup.MachineKind;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialBuilder;
import org.standproud.setup.MaterialGroup;
import org.standproud.setup.Operation;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.PowerPoint;
import org.standproud.setup.Seat;
import org.standproud.setup.Setup;
import org.standproud.setup.Spin;
import org.standproud.setup.Stage;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Stop;
import org.standproud.setup.ToolMaterial;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;

/** Set-ups drawn at random over all that a shop might plausibly or foolishly propose. */
public final class RandomShop {

  private final RandomGenerator random;
  private final RandomGenerator laws;

  /**
   * A shop.
   *
   * @param seed the same seed gives the same set-ups
   */
  public RandomShop(long seed) {
    this.random = new Well19937c(seed);
    this.laws = new Well19937c(~seed);
  }

  /** The next set-up. */
  public Setup next() {
    Stock stock = stock();
    double grip = Math.min(0.98 * stock.heightM(), log(1e-3, 0.06));
    Cutter cutter = cutter();
    return new Setup(
        new JobReference("job", null, null),
        stock,
        hold(grip),
        machine(),
        cutter,
        cut(stock, cutter),
        UnitSystem.METRIC);
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private double log(double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  private boolean chance(double share) {
    return random.nextDouble() < share;
  }

  private <T> T one(T[] of) {
    return of[random.nextInt(of.length)];
  }

  private <T> @Nullable T perhaps(T[] of) {
    return chance(0.25) ? null : one(of);
  }

  private @Nullable Boolean perhaps() {
    return chance(0.3) ? null : Boolean.valueOf(random.nextBoolean());
  }

  private Band about(double likely, double spread) {
    return chance(0.3)
        ? Band.exactly(likely)
        : new Band(
            likely / (1 + spread * random.nextDouble()),
            likely,
            likely * (1 + spread * random.nextDouble()));
  }

  private Stock stock() {
    return StockBuilder.builder()
        .lengthM(log(5e-3, 0.8))
        .thicknessM(log(5e-4, 0.1))
        .heightM(log(8e-3, 0.35))
        .material(material())
        .surface(perhaps(StockSurface.values()))
        .highSpotM(chance(0.4) ? null : Double.valueOf(chance(0.3) ? 0 : log(1e-6, 1e-3)))
        .deburred(perhaps())
        .build();
  }

  private Material material() {
    CuttingRange range = new CuttingRange(0.2, 3, 2e-5, 2e-4);
    return MaterialBuilder.builder()
        .name("random")
        .group(one(MaterialGroup.values()))
        .specificCuttingForcePa(about(log(200e6, 5000e6), 0.6))
        .chipExponent(about(between(0.1, 0.3), 0.3))
        .youngsModulusPa(about(log(40e9, 220e9), 0.2))
        .poissonsRatio(between(0.22, 0.36))
        .densityKgPerM3(log(1700, 9000))
        .yieldPa(about(log(50e6, 1500e6), 0.5))
        .hardnessBrinell(chance(0.5) ? null : Double.valueOf(200))
        .hss(range)
        .carbide(range)
        .source("random")
        .forceCoefficients(
            laws.nextDouble() < 0.7
                ? null
                : ForceCoefficients.values()[laws.nextInt(ForceCoefficients.values().length)])
        .build();
  }

  private Hold hold(double gripM) {
    return Hold.in(vise(), gripM)
        .clamping(
            chance(0.4) ? null : about(log(300, 80e3), 0.5),
            chance(0.4) ? null : about(log(2, 200), 0.5),
            chance(0.5) ? null : about(between(0.08, 0.4), 0.4))
        .packing(packing(gripM))
        .seat(perhaps(Seat.values()))
        .stop(perhaps(Stop.values()))
        .stopHeight(chance(0.5) ? null : Double.valueOf(between(0, 0.2)))
        .clamps(chance(0.5) ? List.of() : List.of(clamp()))
        .viseRunOut(chance(0.5) ? null : Double.valueOf(log(1e-6, 1e-3)))
        .held();
  }

  private Clamp clamp() {
    return new Clamp(
        chance(0.5) ? JawSide.FIXED : JawSide.MOVABLE,
        between(-0.2, 0.2),
        log(1e-3, 0.2),
        chance(0.5) ? null : Double.valueOf(between(0, 0.1)),
        between(0, 0.3));
  }

  private List<Packing> packing(double gripM) {
    List<Packing> packing = new ArrayList<>();
    for (JawSide side : JawSide.values()) {
      if (chance(0.35)) {
        packing.add(
            new Packing(
                side,
                one(PackingKind.values()),
                one(PackingMaterial.values()),
                log(5e-5, 6e-3),
                gripM * between(0, chance(0.1) ? 1.3 : 1)));
      }
    }
    return packing;
  }

  private Vise vise() {
    return ViseBuilder.builder()
        .name("random")
        .jawWidthM(log(0.05, 0.3))
        .jawHeightM(log(0.015, 0.08))
        .greatestOpeningM(log(0.05, 0.4))
        .bedHeightM(between(0.02, 0.12))
        .screw(
            new ClampScrew(
                between(0.01, 0.04),
                between(0.002, 0.01),
                chance(0.3) ? 0 : 0.26,
                about(between(0.08, 0.2), 0.5),
                between(0.015, 0.06),
                about(between(0.05, 0.2), 0.5)))
        .greatestClampingForceN(log(5e3, 1e5))
        .jawSurface(one(JawSurface.values()))
        .fixedJawStiffnessNPerM(about(log(2e7, 1e9), 1))
        .movableJawStiffnessNPerM(about(log(1e7, 5e8), 1))
        .movableJawLiftRad(chance(0.2) ? Band.exactly(0) : about(log(1e-5, 5e-3), 1))
        .build();
  }

  private Machine machine() {
    double slowest = log(0.3, 5);
    double fastest = slowest * log(2, 100);
    return MachineBuilder.builder()
        .name("random")
        .kind(one(MachineKind.values()))
        .travelXM(between(0.2, 1.5))
        .travelYM(between(0.1, 0.6))
        .travelZM(between(0.1, 0.6))
        .noseToTableM(between(0.2, 0.8))
        .quillTravelM(chance(0.3) ? 0 : between(0.05, 0.15))
        .speedsRevPerS(chance(0.5) ? List.of() : List.of(slowest, (slowest + fastest) / 2, fastest))
        .leastSpeedRevPerS(slowest)
        .greatestSpeedRevPerS(fastest)
        .power(
            List.of(new PowerPoint(slowest, log(100, 5e3)), new PowerPoint(fastest, log(100, 2e4))))
        .driveEfficiency(new Band(0.6, 0.75, 0.9))
        .backlashM(chance(0.3) ? 0 : log(1e-5, 1e-3))
        .preloadedScrew(random.nextBoolean())
        .movingMassKg(log(20, 1000))
        .slideFriction(about(between(0.02, 0.25), 0.5))
        .gibPreloadN(new Band(0, 100, 500))
        .spindleStiffnessNPerM(about(log(2e6, 2e8), 1))
        .greatestFeedMPerS(chance(0.3) ? null : Double.valueOf(log(1e-3, 0.2)))
        .build();
  }

  private Cutter cutter() {
    CutterKind kind = one(CutterKind.values());
    double diameter = kind == CutterKind.END_MILL ? log(1e-3, 0.04) : log(0.03, 0.2);
    int teeth = 1 + random.nextInt(12);
    double stickOut = diameter * log(0.5, 8);
    return CutterBuilder.builder()
        .name("random")
        .kind(kind)
        .toolMaterial(one(ToolMaterial.values()))
        .spin(one(Spin.values()))
        .diameterM(diameter)
        .teeth(teeth)
        .greatestDepthM(stickOut * between(0.1, 1))
        .overhangM(stickOut + between(0.02, 0.15))
        .stickOutM(stickOut)
        .fluteLengthM(stickOut * between(0.2, 1))
        .shankDiameterM(diameter * between(0.3, 1.2))
        .holderDiameterM(diameter * between(1, 2.5))
        .enteringAngleRad(chance(0.5) ? Math.PI / 2 : Math.toRadians(between(10, 90)))
        .cornerRadiusM(chance(0.3) ? 0 : log(1e-5, 0.1 * diameter))
        .helixRad(Math.toRadians(chance(0.3) ? 0 : between(-45, 60)))
        .rakeRad(Math.toRadians(between(-15, 25)))
        .wiperM(chance(0.6) ? 0 : between(5e-4, 3e-3))
        .edgeRadiusM(log(2e-6, 1e-4))
        .edge(perhaps(EdgeCondition.values()))
        .chippedTeeth(chance(0.8) ? List.of() : List.of(random.nextInt(teeth)))
        .missingTeeth(chance(0.8) ? List.of() : List.of(random.nextInt(teeth)))
        .runOutM(chance(0.4) ? null : Double.valueOf(chance(0.3) ? 0 : log(1e-6, 2e-4)))
        .build();
  }

  private Cut cut(Stock stock, Cutter cutter) {
    double reach = (cutter.diameterM() + stock.thicknessM()) / 2;
    return CutBuilder.builder()
        .operation(one(Operation.values()))
        .stage(one(Stage.values()))
        .axialDepthM(log(2e-5, 0.05))
        .offsetM(chance(0.1) ? 0 : reach * between(-1.05, 1.05))
        .feed(one(FeedDirection.values()))
        .spindleSpeedRevPerS(log(0.5, 400))
        .feedPerToothM(about(log(3e-6, 5e-4), 0.5))
        .feedDrive(one(FeedDrive.values()))
        .slideLocked(perhaps())
        .otherSlidesLocked(perhaps())
        .leadInM(log(1e-3, 0.3))
        .build();
  }
}
