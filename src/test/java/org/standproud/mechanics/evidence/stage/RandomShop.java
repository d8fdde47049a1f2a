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
import org.standproud.setup.Cutter;
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
import org.standproud.setup.MachineKind;
import org.standproud.setup.Material;
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
import org.standproud.setup.StockSurface;
import org.standproud.setup.Stop;
import org.standproud.setup.ToolMaterial;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Vise;

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
    return new Stock(
        log(5e-3, 0.8),
        log(5e-4, 0.1),
        log(8e-3, 0.35),
        material(),
        perhaps(StockSurface.values()),
        chance(0.4) ? null : Double.valueOf(chance(0.3) ? 0 : log(1e-6, 1e-3)),
        perhaps());
  }

  private Material material() {
    CuttingRange range = new CuttingRange(0.2, 3, 2e-5, 2e-4);
    return new Material(
        "random",
        one(MaterialGroup.values()),
        about(log(200e6, 5000e6), 0.6),
        about(between(0.1, 0.3), 0.3),
        about(log(40e9, 220e9), 0.2),
        between(0.22, 0.36),
        log(1700, 9000),
        about(log(50e6, 1500e6), 0.5),
        chance(0.5) ? null : Double.valueOf(200),
        range,
        range,
        "random",
        laws.nextDouble() < 0.7
            ? null
            : ForceCoefficients.values()[laws.nextInt(ForceCoefficients.values().length)]);
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
    return new Vise(
        "random",
        log(0.05, 0.3),
        log(0.015, 0.08),
        log(0.05, 0.4),
        between(0.02, 0.12),
        new ClampScrew(
            between(0.01, 0.04),
            between(0.002, 0.01),
            chance(0.3) ? 0 : 0.26,
            about(between(0.08, 0.2), 0.5),
            between(0.015, 0.06),
            about(between(0.05, 0.2), 0.5)),
        log(5e3, 1e5),
        one(JawSurface.values()),
        about(log(2e7, 1e9), 1),
        about(log(1e7, 5e8), 1),
        chance(0.2) ? Band.exactly(0) : about(log(1e-5, 5e-3), 1));
  }

  private Machine machine() {
    double slowest = log(0.3, 5);
    double fastest = slowest * log(2, 100);
    return new Machine(
        "random",
        one(MachineKind.values()),
        between(0.2, 1.5),
        between(0.1, 0.6),
        between(0.1, 0.6),
        between(0.2, 0.8),
        chance(0.3) ? 0 : between(0.05, 0.15),
        chance(0.5) ? List.of() : List.of(slowest, (slowest + fastest) / 2, fastest),
        slowest,
        fastest,
        List.of(new PowerPoint(slowest, log(100, 5e3)), new PowerPoint(fastest, log(100, 2e4))),
        new Band(0.6, 0.75, 0.9),
        chance(0.3) ? 0 : log(1e-5, 1e-3),
        random.nextBoolean(),
        log(20, 1000),
        about(between(0.02, 0.25), 0.5),
        new Band(0, 100, 500),
        about(log(2e6, 2e8), 1),
        chance(0.3) ? null : Double.valueOf(log(1e-3, 0.2)));
  }

  private Cutter cutter() {
    CutterKind kind = one(CutterKind.values());
    double diameter = kind == CutterKind.END_MILL ? log(1e-3, 0.04) : log(0.03, 0.2);
    int teeth = 1 + random.nextInt(12);
    double stickOut = diameter * log(0.5, 8);
    return new Cutter(
        "random",
        kind,
        one(ToolMaterial.values()),
        one(Spin.values()),
        diameter,
        teeth,
        stickOut * between(0.1, 1),
        stickOut + between(0.02, 0.15),
        stickOut,
        stickOut * between(0.2, 1),
        diameter * between(0.3, 1.2),
        diameter * between(1, 2.5),
        chance(0.5) ? Math.PI / 2 : Math.toRadians(between(10, 90)),
        chance(0.3) ? 0 : log(1e-5, 0.1 * diameter),
        Math.toRadians(chance(0.3) ? 0 : between(-45, 60)),
        Math.toRadians(between(-15, 25)),
        chance(0.6) ? 0 : between(5e-4, 3e-3),
        log(2e-6, 1e-4),
        perhaps(EdgeCondition.values()),
        chance(0.8) ? List.of() : List.of(random.nextInt(teeth)),
        chance(0.8) ? List.of() : List.of(random.nextInt(teeth)),
        chance(0.4) ? null : Double.valueOf(chance(0.3) ? 0 : log(1e-6, 2e-4)));
  }

  private Cut cut(Stock stock, Cutter cutter) {
    double reach = (cutter.diameterM() + stock.thicknessM()) / 2;
    return new Cut(
        one(Operation.values()),
        one(Stage.values()),
        log(2e-5, 0.05),
        chance(0.1) ? 0 : reach * between(-1.05, 1.05),
        one(FeedDirection.values()),
        log(0.5, 400),
        about(log(3e-6, 5e-4), 0.5),
        one(FeedDrive.values()),
        perhaps(),
        perhaps(),
        log(1e-3, 0.3));
  }
}
