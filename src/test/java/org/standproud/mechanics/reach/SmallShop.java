package org.standproud.mechanics.reach;

import java.util.List;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;
import org.standproud.setup.ClampScrew;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterKind;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSurface;
import org.standproud.setup.JobReference;
import org.standproud.setup.Machine;
import org.standproud.setup.MachineKind;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialGroup;
import org.standproud.setup.Operation;
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

/** One knee mill, one vise, one plate and a few cutters, all invented, for the tests. */
public final class SmallShop {

  private SmallShop() {}

  /** A right-hand end mill of four flutes in a holder of 40 mm that is 60 mm long. */
  public static Cutter endMill(
      ToolMaterial material, double diameterM, double shankM, double fluteM, double stickOutM) {
    return new Cutter(
        "end mill",
        CutterKind.END_MILL,
        material,
        Spin.CLOCKWISE,
        diameterM,
        4,
        fluteM,
        stickOutM + 0.06,
        stickOutM,
        fluteM,
        shankM,
        0.04,
        FastMath.PI / 2,
        0.0004,
        0.5,
        0.1,
        0,
        10e-6,
        EdgeCondition.FRESH,
        List.of(),
        List.of(),
        null);
  }

  /** A 63 mm face mill of five inserts on a 22 mm arbor. */
  public static Cutter faceMill() {
    return new Cutter(
        "face mill",
        CutterKind.FACE_MILL,
        ToolMaterial.CARBIDE,
        Spin.CLOCKWISE,
        0.063,
        5,
        0.006,
        0.09,
        0.05,
        0.04,
        0.022,
        0.05,
        FastMath.toRadians(45),
        0.0008,
        0,
        0.1,
        0,
        30e-6,
        EdgeCondition.FRESH,
        List.of(),
        List.of(),
        null);
  }

  /** A medium carbon steel. */
  public static Material steel() {
    return new Material(
        "C45",
        MaterialGroup.P,
        new Band(1500e6, 1900e6, 2220e6),
        new Band(0.14, 0.18, 0.22),
        Band.between(200e9, 210e9),
        0.3,
        7850,
        Band.between(310e6, 550e6),
        200.0,
        new CuttingRange(0.25, 0.6, 25e-6, 0.15e-3),
        new CuttingRange(1.2, 3.2, 50e-6, 0.25e-3),
        "from memory");
  }

  /** A manual knee mill of about 2.2 kW with a worn screw. */
  public static Machine kneeMill() {
    return new Machine(
        "knee mill",
        MachineKind.MANUAL,
        0.7,
        0.3,
        0.4,
        0.45,
        0.12,
        List.of(1.0, 2.0, 4.0, 8.0, 16.0),
        1,
        16,
        List.of(new PowerPoint(2, 1100), new PowerPoint(4, 2200), new PowerPoint(16, 2200)),
        new Band(0.7, 0.75, 0.8),
        0.3e-3,
        false,
        150,
        new Band(0.1, 0.15, 0.2),
        new Band(0, 100, 400),
        new Band(10e6, 20e6, 40e6),
        0.01);
  }

  /** A vise with jaws 40 mm high over a bed 60 mm above the table. */
  public static Vise vise() {
    return new Vise(
        "vise",
        0.15,
        0.04,
        0.2,
        0.06,
        new ClampScrew(0.022, 0.005, 0.26, Band.between(0.1, 0.2), 0.03, Band.between(0.1, 0.2)),
        40e3,
        JawSurface.GROUND,
        Band.between(1e8, 2e8),
        Band.between(5e7, 1e8),
        Band.between(0, 1e-3));
  }

  /** A plate 120 mm long, 10 mm thick and 80 mm high, 20 mm of it in the jaws, on parallels. */
  public static Setup plate(Cutter cutter, Cut cut) {
    return new Setup(
        new JobReference("job", "work", "10"),
        new Stock(0.12, 0.01, 0.08, steel(), StockSurface.MACHINED, 0.0, true),
        Hold.in(vise(), 0.02).seat(Seat.PARALLELS).stop(Stop.NONE).viseRunOut(0.0).held(),
        kneeMill(),
        cutter,
        cut,
        UnitSystem.METRIC);
  }

  /** A pass by power feed at 0.1 mm a tooth and 4 turns a second. */
  public static Cut pass(
      Operation operation, double axialDepthM, double offsetM, FeedDirection feed) {
    return new Cut(
        operation,
        Stage.ROUGH,
        axialDepthM,
        offsetM,
        feed,
        4,
        Band.exactly(0.1e-3),
        FeedDrive.POWER,
        false,
        true,
        0.06);
  }

  /** The plate under the face mill, 1 mm off its top edge, with a clamping force and friction. */
  public static Setup clamped(@Nullable Band clampingForceN, @Nullable Band friction) {
    Setup plate = plate(faceMill(), pass(Operation.TOP_EDGE, .001, 0, FeedDirection.PLUS_X));
    Hold hold = plate.hold();
    return new Setup(
        plate.job(),
        plate.stock(),
        hold.but().clamping(clampingForceN, null, friction).held(),
        plate.machine(),
        plate.cutter(),
        plate.cut(),
        plate.units());
  }
}
