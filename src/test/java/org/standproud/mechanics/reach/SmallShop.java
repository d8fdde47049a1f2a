package org.standproud.mechanics.reach;

import java.util.List;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;
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
import org.standproud.setup.Hold;
import org.standproud.setup.JawSurface;
import org.standproud.setup.JobReference;
import org.standproud.setup.Machine;
import org.standproud.setup.MachineBuilder;
import org.standproud.setup.MachineKind;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialBuilder;
import org.standproud.setup.MaterialGroup;
import org.standproud.setup.Operation;
import org.standproud.setup.PowerPoint;
import org.standproud.setup.Seat;
import org.standproud.setup.Setup;
import org.standproud.setup.Spin;
import org.standproud.setup.Stage;
import org.standproud.setup.StockBuilder;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Stop;
import org.standproud.setup.ToolMaterial;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;

/** One knee mill, one vise, one plate and a few cutters, all invented, for the tests. */
public final class SmallShop {

  private SmallShop() {}

  /** A right-hand end mill of four flutes in a holder of 40 mm that is 60 mm long. */
  public static Cutter endMill(
      ToolMaterial material, double diameterM, double shankM, double fluteM, double stickOutM) {
    return CutterBuilder.builder()
        .name("end mill")
        .kind(CutterKind.END_MILL)
        .toolMaterial(material)
        .spin(Spin.CLOCKWISE)
        .diameterM(diameterM)
        .teeth(4)
        .greatestDepthM(fluteM)
        .overhangM(stickOutM + 0.06)
        .stickOutM(stickOutM)
        .fluteLengthM(fluteM)
        .shankDiameterM(shankM)
        .holderDiameterM(0.04)
        .enteringAngleRad(FastMath.PI / 2)
        .cornerRadiusM(0.0004)
        .helixRad(0.5)
        .rakeRad(0.1)
        .wiperM(0)
        .edgeRadiusM(10e-6)
        .edge(EdgeCondition.FRESH)
        .chippedTeeth(List.of())
        .missingTeeth(List.of())
        .build();
  }

  /** A 63 mm face mill of five inserts on a 22 mm arbor. */
  public static Cutter faceMill() {
    return CutterBuilder.builder()
        .name("face mill")
        .kind(CutterKind.FACE_MILL)
        .toolMaterial(ToolMaterial.CARBIDE)
        .spin(Spin.CLOCKWISE)
        .diameterM(0.063)
        .teeth(5)
        .greatestDepthM(0.006)
        .overhangM(0.09)
        .stickOutM(0.05)
        .fluteLengthM(0.04)
        .shankDiameterM(0.022)
        .holderDiameterM(0.05)
        .enteringAngleRad(FastMath.toRadians(45))
        .cornerRadiusM(0.0008)
        .helixRad(0)
        .rakeRad(0.1)
        .wiperM(0)
        .edgeRadiusM(30e-6)
        .edge(EdgeCondition.FRESH)
        .chippedTeeth(List.of())
        .missingTeeth(List.of())
        .build();
  }

  /** A medium carbon steel. */
  public static Material steel() {
    return MaterialBuilder.builder()
        .name("C45")
        .group(MaterialGroup.P)
        .specificCuttingForcePa(new Band(1500e6, 1900e6, 2220e6))
        .chipExponent(new Band(0.14, 0.18, 0.22))
        .youngsModulusPa(Band.between(200e9, 210e9))
        .poissonsRatio(0.3)
        .densityKgPerM3(7850)
        .yieldPa(Band.between(310e6, 550e6))
        .hardnessBrinell(200.0)
        .hss(new CuttingRange(0.25, 0.6, 25e-6, 0.15e-3))
        .carbide(new CuttingRange(1.2, 3.2, 50e-6, 0.25e-3))
        .source("from memory")
        .build();
  }

  /** A manual knee mill of about 2.2 kW with a worn screw. */
  public static Machine kneeMill() {
    return MachineBuilder.builder()
        .name("knee mill")
        .kind(MachineKind.MANUAL)
        .travelXM(0.7)
        .travelYM(0.3)
        .travelZM(0.4)
        .noseToTableM(0.45)
        .quillTravelM(0.12)
        .speedsRevPerS(List.of(1.0, 2.0, 4.0, 8.0, 16.0))
        .leastSpeedRevPerS(1)
        .greatestSpeedRevPerS(16)
        .power(List.of(new PowerPoint(2, 1100), new PowerPoint(4, 2200), new PowerPoint(16, 2200)))
        .driveEfficiency(new Band(0.7, 0.75, 0.8))
        .backlashM(0.3e-3)
        .preloadedScrew(false)
        .movingMassKg(150)
        .slideFriction(new Band(0.1, 0.15, 0.2))
        .gibPreloadN(new Band(0, 100, 400))
        .spindleStiffnessNPerM(new Band(10e6, 20e6, 40e6))
        .greatestFeedMPerS(0.01)
        .build();
  }

  /** A vise with jaws 40 mm high over a bed 60 mm above the table. */
  public static Vise vise() {
    return ViseBuilder.builder()
        .name("vise")
        .jawWidthM(0.15)
        .jawHeightM(0.04)
        .greatestOpeningM(0.2)
        .bedHeightM(0.06)
        .screw(
            new ClampScrew(
                0.022, 0.005, 0.26, Band.between(0.1, 0.2), 0.03, Band.between(0.1, 0.2)))
        .greatestClampingForceN(40e3)
        .jawSurface(JawSurface.GROUND)
        .fixedJawStiffnessNPerM(Band.between(1e8, 2e8))
        .movableJawStiffnessNPerM(Band.between(5e7, 1e8))
        .movableJawLiftRad(Band.between(0, 1e-3))
        .build();
  }

  /** A plate 120 mm long, 10 mm thick and 80 mm high, 20 mm of it in the jaws, on parallels. */
  public static Setup plate(Cutter cutter, Cut cut) {
    return new Setup(
        new JobReference("job", "work", "10"),
        StockBuilder.builder()
            .lengthM(0.12)
            .thicknessM(0.01)
            .heightM(0.08)
            .material(steel())
            .surface(StockSurface.MACHINED)
            .highSpotM(0.0)
            .deburred(true)
            .build(),
        Hold.in(vise(), 0.02).seat(Seat.PARALLELS).stop(Stop.NONE).viseRunOut(0.0).held(),
        kneeMill(),
        cutter,
        cut,
        UnitSystem.METRIC);
  }

  /** A pass by power feed at 0.1 mm a tooth and 4 turns a second. */
  public static Cut pass(
      Operation operation, double axialDepthM, double offsetM, FeedDirection feed) {
    return CutBuilder.builder()
        .operation(operation)
        .stage(Stage.ROUGH)
        .axialDepthM(axialDepthM)
        .offsetM(offsetM)
        .feed(feed)
        .spindleSpeedRevPerS(4)
        .feedPerToothM(Band.exactly(0.1e-3))
        .feedDrive(FeedDrive.POWER)
        .slideLocked(false)
        .otherSlidesLocked(true)
        .leadInM(0.06)
        .build();
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
